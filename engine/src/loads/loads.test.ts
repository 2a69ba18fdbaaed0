import { checkProject, type Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate } from '../index.ts';
import { sunlitShare } from './sunlight.ts';

const loadsOf = (project: Project) => {
  const { loads } = evaluate(project, {}).plan.trades;
  if (!loads) throw new Error('the loads are built');
  return loads;
};
const likely = (x: { ok: boolean; value?: { likely: number } }): number => x.value?.likely ?? Number.NaN;
const is = (value: number) => ({ value, known: 'measured' as const });
const project = (document: unknown): Project => {
  const opened = checkProject(document);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems[0]));
  return opened.project;
};

describe('the sums of Tern Ledge', () => {
  const loads = loadsOf(demo('tern-ledge'));
  const rooms = Object.values(loads.rooms);

  it('rooms add up to the house, parts add up to their room', () => {
    expect(rooms.reduce((a, r) => a + likely(r.heating), 0)).toBeCloseTo(likely(loads.heating), 7);
    expect(loads.cooling.ok && rooms.reduce((a, r) => a + likely(r.cooling), 0)).toBeCloseTo(
      loads.cooling.ok ? loads.cooling.value.sensible.likely : 0,
      7,
    );
    for (const r of rooms) expect(r.heatingParts.reduce((a, p) => a + p.heat, 0)).toBeCloseTo(likely(r.heating), 7);
  });

  it('a range holds its likely value, and its unknowns are ranked', () => {
    const { heating } = loads;
    if (!heating.ok) throw new Error('the demo is complete');
    expect(heating.value.low).toBeLessThan(heating.value.likely);
    const reach = heating.value.drivers.map((d) => Math.max(Math.abs(d.atLow), Math.abs(d.atHigh)));
    expect(reach).toEqual([...reach].sort((a, b) => b - a));
  });
});

describe('rooms that are not the whole house yet', () => {
  const tern = demo('tern-ledge');
  const cover = (house: object) =>
    evaluate(project({ schema: 1, site: tern.site, house: { ...tern.house, ...house } }), {}).plan.findings.find(
      (f) => f.id === 'loads/rooms-cover',
    );
  const only = (id: string) => Object.entries(tern.house?.surfaces ?? {}).filter(([, x]) => x.room === id);

  it('are told by their share of the floor area, and by name where they have no walls', () => {
    // By hand: the six rooms of the demo add up to its 95.3 m²; the sitting room is drawn 5.05 by 6.6 m.
    expect(cover({})).toMatchObject({ status: 'ok' });
    const part = cover({ surfaces: Object.fromEntries(only('sitting')), openings: {} });
    expect(part).toMatchObject({ status: 'fails', holdPoint: 'decide' });
    expect(part?.value).toBeCloseTo((5.05 * 6.6) / 95.3, 9);
    expect(part?.mend).toContain('South bedroom');
    expect(cover({ surfaces: {}, openings: {} })).toBeUndefined();
    expect(cover({ floorArea: undefined })).toBeUndefined();
    expect(cover({ floorArea: is(190.6) })?.status).toBe('fails');
  });
});

describe('a quick answer from a handful of answers', () => {
  const answers = {
    schema: 1,
    site: { latitude: is(44), elevation: is(200), coldNight: is(-20), hotAfternoon: is(31) },
    house: { floorArea: is(95) },
  };

  it('is there, as a range, and narrows with a blower-door figure', () => {
    const guess = loadsOf(project(answers));
    const tested = loadsOf(project({ ...answers, house: { floorArea: is(95), airtightness: is(7) } }));
    expect(guess.basis).toBe('quick');
    const width = (l: typeof guess) => (l.heating.ok ? l.heating.value.high - l.heating.value.low : Number.NaN);
    expect(width(guess)).toBeGreaterThan(width(tested));
  });

  it('of a house without any floor is asked about, and no mistake of the program', () => {
    const { findings } = evaluate(project({ ...answers, house: { floorArea: is(0) } }), {}).plan;
    expect(findings.filter((f) => f.because === 'fault')).toEqual([]);
    const asked = findings.find((f) => f.needs?.includes('house.floorArea'));
    expect(asked?.mend).toBe('Nothing can be reckoned with what is entered. Look again at: Heated floor area.');
  });

  it('is wide enough for a house of any age and any draughts where nobody said which', () => {
    const heating = (house: object) => {
      const { heating } = loadsOf(project({ ...answers, house: { floorArea: is(95), ...house } }));
      if (!heating.ok) throw new Error('the answers suffice');
      return heating.value;
    };
    const unsaid = heating({});
    const ages = ['before-1940', '1940-1965', '1966-1980', '1981-1992', '1993-2006', 'since-2007'];
    const said = [
      ...ages.map((era) => ({ era })),
      ...['tight', 'fair', 'draughty', 'leaky'].map((draught) => ({ draught })),
    ];
    for (const answer of said) {
      const { likely } = heating(answer);
      expect(likely, JSON.stringify(answer)).toBeGreaterThan(unsaid.low);
      expect(likely, JSON.stringify(answer)).toBeLessThan(unsaid.high);
    }
    expect(unsaid.drivers.map((d) => d.path).slice(0, 2)).toEqual(['house.era', 'house.draught']);
  });

  it('asks for less heat in a later house, and for twice in one twice as cold', () => {
    const of = (change: object, site: object = {}) =>
      likely(
        loadsOf(project({ ...answers, site: { ...answers.site, ...site }, house: { ...answers.house, ...change } }))
          .heating,
      );
    const eras = ['before-1940', '1966-1980', '1993-2006', 'since-2007'].map((era) => of({ era }));
    expect(eras).toEqual([...eras].sort((a, b) => b - a));
    expect(of({}, { coldNight: is(-20) })).toBeGreaterThan(1.7 * of({}, { coldNight: is(0) }));
  });
});

describe('the attic', () => {
  it('is hotter under a darker roof and cooler with more vents', () => {
    const of = (roof: object) => {
      const p = demo('juniper-flat');
      return likely(loadsOf({ ...p, house: { ...p.house, roof: { ...p.house?.roof, ...roof } } } as Project).atticDay);
    };
    expect(of({ absorptance: is(0.92) })).toBeGreaterThan(of({ absorptance: is(0.3) }) + 5);
    expect(of({ airChanges: is(1) })).toBeGreaterThan(of({ airChanges: is(10) }));
  });
});

describe('an overhang', () => {
  const plane = { tilt: 90, azimuth: 180 };
  it('shades more the farther it stands out, and by the profile angle', () => {
    const share = (overhang: number) =>
      sunlitShare({ overhang, gap: 0, height: 1 }, plane, { zenith: 45, azimuth: 180 });
    // At 45° straight ahead the shadow is as deep as the overhang.
    expect(share(0.4)).toBeCloseTo(0.6, 12);
    expect([0, 0.2, 0.5, 1, 2].map((x) => Number(share(x).toFixed(12)))).toEqual([1, 0.8, 0.5, 0, 0]);
  });
  it('shades nothing when the sun is behind the wall', () => {
    expect(sunlitShare({ overhang: 1, gap: 0, height: 1 }, plane, { zenith: 45, azimuth: 0 })).toBe(1);
  });
});
