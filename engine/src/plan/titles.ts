import type { Known, TradeId } from '@kneewall/project';
import type { Consequence, HoldPoint } from './finding.ts';

/** The words of the job, the same on every screen and every paper. */
export const consequenceTitle: Readonly<Record<Consequence, string>> = {
  harm: 'can hurt someone',
  damage: 'can damage something',
  money: 'costs money',
  comfort: 'costs comfort',
};

export const holdPointTitle: Readonly<Record<HoldPoint, { readonly title: string; readonly until: string }>> = {
  decide: { title: 'Decide', until: 'before you settle whether and where' },
  order: { title: 'Order', until: 'before anything is paid for' },
  lift: { title: 'Lift', until: 'before anyone carries or climbs' },
  cut: { title: 'Cut', until: 'before a hole or a duct is cut' },
  connect: { title: 'Connect', until: 'before pipe, drain and wire are joined' },
  close: { title: 'Close', until: 'before anything is covered' },
  start: { title: 'Start', until: 'before it runs for good' },
  season: { title: 'Season', until: 'every spring and autumn again' },
};

export const tradeTitle: Readonly<Record<TradeId, string>> = {
  climate: 'Climate',
  loads: 'Loads',
  equipment: 'Equipment',
  air: 'Air',
  condensate: 'Condensate',
  lineset: 'Line set',
  circuit: 'Circuit',
  offgrid: 'Own power',
  access: 'Access',
  paperwork: 'Paperwork',
  materials: 'Materials',
  schedule: 'Schedule',
  commissioning: 'Commissioning',
};

export const knownTitle: Readonly<Record<Known, string>> = {
  measured: 'measured',
  nameplate: 'nameplate or sheet',
  estimated: 'estimated',
  assumed: 'assumed',
};

/** What a step of a working is that is no arithmetic. */
export const formulaTitle: Readonly<Record<string, string>> = {
  given: 'from your answers',
  table: 'from a table, or worked out elsewhere',
  solved: 'found by iteration; what is left over proves it',
};
