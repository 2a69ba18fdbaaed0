import type { PowerYear } from '../coupling/power/powerAnswers.ts';
import { required } from '../plan/outcome.ts';
import { draftsOf } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { batteryFindings } from './batteryFindings.ts';
import { smarterControl } from './controlFindings.ts';
import { type Found, found } from './draftOf.ts';
import { generatorFindings } from './generatorFindings.ts';
import { gridFindings } from './gridFindings.ts';
import { helpFindings } from './helpFindings.ts';
import { learnedHousehold } from './learnedFindings.ts';
import { recordedFindings } from './recordedFindings.ts';
import type { OffgridResult } from './result.ts';
import { wintersFindings } from './wintersFindings.ts';

/** What one's own power has to answer for; on the grid the bill and an outage, where they are asked. */
export function findings(result: OffgridResult, view: PlanView): Drafts {
  const all = result.own ? ownFindings(result, view) : gridFindings(result, view);
  return draftsOf([...all, ...learnedHousehold(view)]);
}

const ownFindings = (result: OffgridResult, view: PlanView): Found[] => [
  heatHours(view),
  ...generatorFindings(result, view),
  standingShare(view),
  emptyNights(view),
  ...batteryFindings(result, view),
  ...helpFindings(result, view),
  ...wintersFindings(result, view),
  ...recordedFindings(result, view),
  smarterControl(view),
];

const yearOf = ({ season }: PlanView): PowerYear | undefined => (season.power.ok ? season.power.value : undefined);

/** Hours in which the house is cold for want of power. */
function heatHours(view: PlanView): Found {
  const year = yearOf(view);
  const source = 'offgrid.heat-hours';
  const facts = year ? { ...year.heat } : {};
  const of = { id: 'heat-hours', holdPoint: 'decide', consequence: 'harm', kind: 'time' } as const;
  return found({ ...of, limit: { max: 24 * 3600 }, source, facts }, (recorder) => {
    const { cold } = required(view.season.power).heat;
    recorder.step('h', 'table', {}, cold, 'h', source);
    recorder.step('t', 'h * 3600', { h: cold }, cold * 3600, 's', source);
    return cold * 3600;
  });
}

/** What never rests, of all that winter draws. */
function standingShare(view: PlanView): Found {
  const year = yearOf(view);
  const source = 'offgrid.standing';
  const of = { id: 'standing-share', holdPoint: 'decide', consequence: 'money', kind: 'fraction' } as const;
  return found(
    { ...of, limit: { max: 0.25 }, source, facts: year ? { daily: year.standing.daily } : {} },
    (recorder) => {
      const { share } = required(view.season.power).standing;
      recorder.step('share', 'table', {}, share, '', source);
      return share;
    },
  );
}

/** Nights on which a battery that was more than half full gives out. */
function emptyNights(view: PlanView): Found {
  const year = yearOf(view);
  const source = 'offgrid.empty-nights';
  const hour = year?.emptyNights.hour;
  const of = { id: 'empty-nights', holdPoint: 'season', consequence: 'comfort', kind: 'count' } as const;
  return found({ ...of, limit: { max: 5 }, source, facts: hour === undefined ? {} : { hour } }, (recorder) => {
    const { nights } = required(view.season.power).emptyNights;
    recorder.step('nights', 'table', {}, nights, '', source);
    return nights;
  });
}
