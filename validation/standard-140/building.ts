import {
  type Building,
  type GlassOptics,
  type OutdoorFace,
  opticsOfPanes,
  opticsOfTable,
  type Slab,
  type System,
  standardPressure,
  type Window,
  withSunShares,
  type ZoneFace,
} from '@kneewall/engine/physics';
import type { CaseFile, CaseSurface, CaseWindow } from './caseFile.ts';

/** Radiation of a surface of emittance 1 at room temperature and at a cool outdoor one, W/(m²K): 4 σ T³ at 292.7 and 283.15 K. */
const roomRadiation = 5.687;
const outdoorRadiation = 5.149;
/** The combined films at which the tests state a window's U. */
const uFilms = { inside: 8.29, outside: 21 };
/** Smooth glass against the tests' rough walls, 21.0 to 29.3 combined and 8.0 to 11.9 by convection alone. */
const smooth = 8 / 11.9;
const glassEmittance = 0.84;
/** Share of the sun let in that comes by way of warm glass, in a table that does not tell the two apart: clear double glass. */
const takenUp = 0.1;

/** The building of a case file. Throws a RangeError with the id of what does not fit together. */
export function buildingOf(file: CaseFile): Building {
  const grounds = file.surfaces.filter((s) => s.other === 'ground');
  const windows = file.windows.map((w) => windowOf(file, w));
  const plain = file.surfaces.map((s) => slabOf(file, s, grounds.indexOf(s)));
  // Where a file leaves open who takes up the sun, floors do first.
  const slabs = file.surfaces.every((s) => s.solarShare === undefined) ? withSunShares(plain, windows) : plain;
  return {
    pressure: standardPressure(file.site.elevation),
    zones: file.zones.map((z) => ({ id: z.id, volume: z.volume })),
    slabs,
    windows,
    leakage: file.leakage.map((l) => ({
      kind: 'constant',
      zone: l.zone,
      flow: (l.airChanges * (file.zones.find((z) => z.id === l.zone)?.volume ?? 0)) / 3600,
    })),
    passages: [],
    gains: file.gains.map((g) => ({
      zone: g.zone,
      watts: Array.from({ length: 24 }, () => g.watts),
      radiant: g.radiant,
    })),
    systems: systemsOf(file),
    fans: file.zones.map((z) => ({
      zone: z.id,
      flow: hoursOf(file, z.id, (c) => c.ventilation).map((c) => c?.value ?? 0),
    })),
    windFactor: 0.48,
    groundReflectance: file.site.groundReflectance,
    series: grounds.map((s) => new Float64Array(8760).fill(groundOf(s))),
  };
}

function groundOf(s: CaseSurface): number {
  if (s.groundTemperature === undefined)
    throw new RangeError(`${s.id}: a surface on the ground needs groundTemperature`);
  return s.groundTemperature;
}

/** +1 for a floor, -1 for a ceiling, as a face of its zone. */
const looks = (tilt: number): { looks?: 1 | -1 } => (tilt > 120 ? { looks: 1 } : tilt < 60 ? { looks: -1 } : {});

function insideFace(s: CaseSurface, zone: string, emittance: number): ZoneFace {
  if ('inside' in s.films) {
    const radiative = emittance * roomRadiation;
    return {
      side: 'zone',
      zone,
      emittance,
      radiative,
      convective: above(s.films.inside - radiative, s.id),
      ...looks(s.tilt),
    };
  }
  return { side: 'zone', zone, emittance, convective: s.films.insideConvective, ...looks(s.tilt) };
}

/** What a combined film leaves to the air once radiation has taken its part. */
function above(convective: number, id: string): number {
  if (convective <= 0) throw new RangeError(`${id}: the combined film is less than radiation alone`);
  return convective;
}

function outdoorFace(s: CaseSurface): OutdoorFace {
  const { tilt, azimuth, films } = s;
  const [absorptance, emittance] = [s.absorptance.outside, s.emittance.outside];
  const convective =
    'outside' in films
      ? above(films.outside - emittance * outdoorRadiation, s.id)
      : (films.outsideConvective ?? { wind: 1 });
  return { side: 'outdoors', tilt, azimuth, absorptance, emittance, convective };
}

function slabOf(file: CaseFile, s: CaseSurface, ground: number): Slab {
  const inside = insideFace(s, s.zone, s.emittance.inside);
  const other =
    s.other === 'outdoors'
      ? { ...outdoorFace(s), ...underOverhang(file, s) }
      : s.other === 'ground'
        ? ({ side: 'given', series: ground } as const)
        : insideFace(s, zoneId(file, s), s.emittance.outside);
  return { id: s.id, area: s.area, layers: s.layers, inside, other, sunShare: s.solarShare ?? 0 };
}

/**
 * A window's overhang that spans a whole wall at roof level shades that wall too. It does so where its width times its
 * height above the floor is the wall's area, windows counted.
 */
function underOverhang(file: CaseFile, s: CaseSurface): Pick<OutdoorFace, 'shaded'> {
  const windows = file.windows.filter((w) => w.surface === s.id);
  const gross = windows.reduce((a, w) => a + w.rect.width * w.rect.height, s.area);
  for (const { rect, shades } of windows) {
    for (const shade of shades) {
      if (shade.kind !== 'overhang') continue;
      const width = shade.left + rect.width + shade.right;
      const height = rect.y + rect.height + shade.offset;
      if (Math.abs(width * height - gross) > 0.01 * gross) continue;
      return { shaded: { width, height, shades: [{ ...shade, offset: 0, left: 0, right: 0 }] } };
    }
  }
  return {};
}

function zoneId(file: CaseFile, s: CaseSurface): string {
  if (!file.zones.some((z) => z.id === s.other)) throw new RangeError(`${s.id}: there is no zone "${s.other}"`);
  return s.other;
}

function windowOf(file: CaseFile, w: CaseWindow): Window {
  const wall = file.surfaces.find((s) => s.id === w.surface);
  if (!wall) throw new RangeError(`${w.id}: there is no surface "${w.surface}"`);
  const resistance = 1 / w.u - 1 / uFilms.inside - 1 / uFilms.outside;
  if (resistance <= 0) throw new RangeError(`${w.id}: U ${w.u} is more than its films let through`);
  const area = w.rect.width * w.rect.height;
  const framed = { ...wall, films: w.films ?? wall.films, id: w.id };
  const outer = outdoorFace({ ...framed, emittance: { inside: glassEmittance, outside: glassEmittance } });
  const convective = w.films ? outer.convective : smoother(outer.convective);
  return {
    slab: {
      id: w.id,
      area,
      layers: [{ resistance }],
      inside: insideFace(framed, wall.zone, glassEmittance),
      other: { ...outer, absorptance: 0, convective },
    },
    width: w.rect.width,
    height: w.rect.height,
    optics: opticsOf(w),
    shades: w.shades.map((s) => (s.kind === 'fin' ? { ...s, from: s.from - w.rect.y, to: s.to - w.rect.y } : s)),
  };
}

const smoother = (film: OutdoorFace['convective']): OutdoorFace['convective'] =>
  typeof film === 'number' ? film * smooth : { wind: film.wind * smooth };

function opticsOf(w: CaseWindow): GlassOptics {
  const [first] = w.panes ?? [];
  if (first) {
    // The optics count in millimetres. No glass is 10 cm thick, none so clear as one in a metre: such numbers are mm already.
    const thickness = first.thickness < 0.1 ? first.thickness * 1000 : first.thickness;
    const extinction = first.extinction < 1 ? first.extinction : first.extinction / 1000;
    return opticsOfPanes({ thickness, index: first.index, extinction }, w.panes?.length === 1 ? 1 : 2);
  }
  if (!w.shgcByAngle) throw new RangeError(`${w.id}: a window needs panes or a table by angle`);
  return opticsOfTable(w.shgcByAngle, takenUp);
}

type Control = CaseFile['controls'][number];
/** For each hour of the day the last control of the zone that says something, and what it says at the hour's ends. */
function hoursOf<T>(file: CaseFile, zone: string, pick: (c: Control) => T | undefined) {
  return Array.from({ length: 24 }, (_, h) => {
    const found = file.controls.filter((c) => c.zone === zone && within(c, h) && pick(c) !== undefined).at(-1);
    const value = found && pick(found);
    return found && value !== undefined ? { value, control: found } : undefined;
  });
}

const spanOf = ([from, to]: readonly [number, number]): number => (to > from ? to - from : to - from + 24);
const within = (c: Control, hour: number): boolean => (hour - c.hours[0] + 24) % 24 < spanOf(c.hours);

/** One system for each zone that is ever heated or cooled. */
function systemsOf(file: CaseFile): System[] {
  return file.zones.flatMap((z) => {
    const heatTo = hoursOf(file, z.id, (c) => c.heat).map((c, h) => (c ? ends(c.value, c.control, h) : null));
    const coolTo = hoursOf(file, z.id, (c) => c.cool).map((c, h) => (c ? ends(c.value, c.control, h) : null));
    if ([...heatTo, ...coolTo].every((x) => x === null)) return [];
    return [{ id: z.id, sensor: z.id, shares: { [z.id]: 1 }, heatTo, coolTo }];
  });
}

/** A set point at the beginning and end of an hour; one that rises does so in a line over its control's hours. */
function ends(value: number | [number, number], control: Control, hour: number): [number, number] {
  if (typeof value === 'number') return [value, value];
  const span = spanOf(control.hours);
  const at = (hour - control.hours[0] + 24) % 24;
  const on = (x: number): number => value[0] + ((value[1] - value[0]) * x) / span;
  return [on(at), on(at + 1)];
}
