import { humidityRatio } from '../physics/air/index.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import { type About, draftOf, type Found } from './about.ts';
import { gapsOf, softGaps } from './gaps.ts';
import { type Muggy, type MuggyAt, muggyDay } from './muggy.ts';
import { characterOf } from './ownSeason.ts';
import type { Candidate, RowName } from './result.ts';
import { inBtuPerWattHour, type Season } from './season/index.ts';
import { betweenRows, readSheet } from './sheet.ts';
import { altitudeFactor } from './unitAt.ts';

/** What a candidate does over the year, and what its sheet leaves open. */
export const seasonFindings = (about: About, view: PlanView): Found[] => [
  helped(about),
  ownYear(about, view),
  humidity(about, view),
  gaps(about, view),
];

/** Heating hours in which the house needs more than the unit gives. */
function helped(about: About): Found {
  const { candidate } = about;
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const hours = required(candidate.helpedHours);
    const all = required(candidate.heatingHours);
    if (all <= 0) return unresolved('out-of-range', 'site.coldNight');
    const inputs = { h_helped: hours.likely, h_heating: all };
    recorder.step('h_helped', 'table', {}, hours.likely, 'h', 'equipment.helped');
    recorder.step('h_heating', 'table', {}, all, 'h', 'equipment.helped');
    recorder.step('share', 'h_helped / h_heating', inputs, hours.likely / all, '', 'equipment.helped');
    return { low: hours.low / all, likely: hours.likely / all, high: hours.high / all };
  });
  return {
    draft: {
      ...draftOf(about, 'helped'),
      consequence: 'comfort',
      kind: 'fraction',
      value,
      limit: { max: 0.05 },
      source: 'equipment.helped',
      facts: {
        name: candidate.name,
        ...(candidate.helpedHours.ok ? { hours: candidate.helpedHours.value.likely } : {}),
      },
    },
    working: steps,
  };
}

type Rated = { readonly by: 'us' | 'europe'; readonly season: Season };

/** The published figure the sheet allows; with neither, the rows that the nearer of the two lacks. */
function ratedBy({ id, seasons }: Candidate): Outcome<Rated> {
  return attempt(() => {
    if (seasons.usHeating.season.ok) return { by: 'us', season: seasons.usHeating.season.value };
    if (seasons.europe.season.ok) return { by: 'europe', season: seasons.europe.season.value };
    return unresolved('missing', `candidates.${id}.rows`);
  });
}

const lacking = ({ usHeating, europe }: Candidate['seasons']): readonly RowName[] =>
  usHeating.missing.length <= europe.missing.length ? usHeating.missing : europe.missing;

/** Row names as one text that words are made of: `heating between 1.7`. */
export const rowCodes = (rows: readonly RowName[]): string =>
  rows.map((r) => `${r.mode} ${r.speed} ${r.outdoor}`).join(';');

/** The project's own year beside the published figure, as a share of it. */
function ownYear(about: About, view: PlanView): Found {
  const { candidate } = about;
  const { recorder, steps } = recordWorking();
  const { own, usCooling } = candidate.seasons;
  const rated = ratedBy(candidate);
  const value = attempt(() => {
    const { ratio } = required(own);
    const { season } = required(rated);
    if (!(season.ratio > 0)) return unresolved('out-of-range', `candidates.${candidate.id}.rows`);
    const inputs = { S_own: ratio.likely, S_rated: season.ratio };
    recorder.step('S_own', 'table', {}, ratio.likely, '', 'equipment.own-season');
    recorder.step('S_rated', 'table', {}, season.ratio, '', `equipment.${required(rated).by}-season`);
    const share = ratio.likely / season.ratio;
    recorder.step('share', 'S_own / S_rated', inputs, share, '', 'equipment.field');
    return { low: ratio.low / season.ratio, likely: share, high: ratio.high / season.ratio };
  });
  return {
    draft: {
      ...draftOf(about, 'own-year'),
      consequence: 'money',
      kind: 'fraction',
      value,
      limit: { min: 0.7 },
      source: 'equipment.field',
      facts: {
        name: candidate.name,
        missing: rowCodes(lacking(candidate.seasons)),
        ...(own.ok ? { own: own.value.ratio.likely, basis: own.value.basis, beyond: own.value.hoursBeyond } : {}),
        ...(rated.ok ? { rated: rated.value.season.ratio, by: rated.value.by } : {}),
        ...(usCooling.season.ok ? { seer: inBtuPerWattHour(usCooling.season.value.ratio) } : {}),
        ...(rated.ok ? { hspf: inBtuPerWattHour(rated.value.season.ratio) } : {}),
        ...reasons(candidate, rated, view),
      },
    },
    working: steps,
  };
}

/** How the two seasons differ: K of outdoor air, shares of the heat, and the thin air, each only where it is known. */
function reasons(candidate: Candidate, rated: Outcome<Rated>, view: PlanView): Readonly<Record<string, number>> {
  const { own } = candidate.seasons;
  const pressure = view.trades.climate?.pressure;
  const thin = pressure?.ok ? { thin: 1 - altitudeFactor(pressure.value, 0.5) } : {};
  if (!own.ok || !rated.ok) return thin;
  const theirs = characterOf(rated.value.season);
  const { character: ours } = own.value;
  return {
    ...thin,
    colder: theirs.outdoor - ours.outdoor,
    cycling: ours.cycling - theirs.cycling,
    backup: ours.backup - theirs.backup,
  };
}

/** Latent heat taken out on a muggy day against what comes in; at the agreed flow where there is one. */
function humidity(about: About, view: PlanView): Found {
  const { candidate } = about;
  const { recorder, steps } = recordWorking();
  const day: Outcome<Muggy> = attempt(() => {
    const { loads } = view.trades;
    if (!loads) return unresolved('fault', 'house');
    const muggy = muggyDay(candidate.unit, muggyAt(about, view), loads);
    const inputs = {
      L_unit: muggy.taken.likely,
      L_house: muggy.needed.likely,
      L_leaks: muggy.brought.likely,
    };
    recorder.step('L_unit', 'table', {}, muggy.taken.likely, 'W', 'equipment.coil');
    recorder.step('L_house', 'table', {}, muggy.needed.likely, 'W', 'equipment.muggy');
    recorder.step('L_leaks', 'table', {}, muggy.brought.likely, 'W', 'equipment.muggy-leaks');
    recorder.step('L_spare', 'L_unit - L_house - L_leaks', inputs, muggy.spare.likely, 'W', 'equipment.muggy');
    return muggy;
  });
  return {
    draft: {
      ...draftOf(about, 'muggy-day'),
      consequence: 'comfort',
      kind: 'power',
      value: attempt(() => required(day).spare),
      limit: { min: 0 },
      source: 'equipment.muggy',
      facts: {
        name: candidate.name,
        ...(day.ok
          ? {
              taken: day.value.taken.likely,
              needed: day.value.needed.likely + day.value.brought.likely,
              brought: day.value.brought.likely,
            }
          : {}),
        ...(about.bought ? { bought: 1 } : {}),
      },
    },
    working: steps,
  };
}

/**
 * The air of that day: as agreed for the unit the plan is made for, else the room's at the sheet's own flow, with as much
 * vapour from leaking returns as agreed.
 */
function muggyAt({ candidate, holdPoint }: About, view: PlanView): MuggyAt {
  const { climate } = view.trades;
  const unknown = { ok: false, because: 'missing', paths: ['site.hotAfternoon'] } as const;
  const day = required(climate?.day ?? unknown);
  const pressure = required(climate?.pressure ?? unknown);
  const rows = candidate.unit.rows.filter((r) => r.mode === 'cooling' && r.speed === 'most');
  const mean = day.outdoor.likely - day.dailyRange.likely / 2;
  // Cooler than its coolest row a unit gives no less than at that row.
  const outdoor = Math.max(mean, Math.min(...rows.map((r) => r.outdoor)));
  const { cooling, humidity } = view.project.house.setpoints;
  const s = scenario();
  const entering = s.of(cooling);
  const roomHumidity = humidityRatio({ t: entering, rh: s.of(humidity) }, pressure);
  const agreed = view.agreement.cooling;
  const enteringHumidity = agreed?.enteringHumidity ?? roomHumidity;
  if (agreed && holdPoint === 'order')
    return { outdoor, entering: agreed.entering, enteringHumidity, roomHumidity, flow: agreed.flow, pressure };
  const flow = betweenRows(readSheet(candidate.unit, 'cooling', 'most', outdoor), (r) => r.airflow);
  return {
    outdoor,
    entering,
    enteringHumidity,
    roomHumidity,
    flow: flow ?? unresolved('missing', `candidates.${candidate.id}.rows`),
    pressure,
  };
}

/** What the sheet leaves open: a gap that stops an answer counts, one that only widens it makes the range. */
function gaps(about: About, view: PlanView): Found {
  const { candidate } = about;
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    if (candidate.unit.rows.length === 0) return unresolved('missing', `candidates.${candidate.id}.rows`);
    const found = gapsOf(candidate, view.trades.climate);
    const hard = found.filter((g) => !softGaps.includes(g)).length;
    recorder.step('gaps', 'table', {}, hard, '', 'equipment.gaps');
    return { low: hard, likely: hard, high: found.length };
  });
  return {
    draft: {
      ...draftOf(about, 'data-gaps'),
      consequence: 'money',
      kind: 'count',
      value,
      limit: { max: 0 },
      source: 'equipment.gaps',
      facts: {
        name: candidate.name,
        gaps: gapsOf(candidate, view.trades.climate).join(';'),
        missing: rowCodes(lacking(candidate.seasons)),
      },
    },
    working: steps,
  };
}
