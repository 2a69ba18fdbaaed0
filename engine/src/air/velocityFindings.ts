import { recordWorking } from '../plan/working.ts';
import type { Bought } from './bought.ts';
import type { AirFlows, AirModel, DuctSection, Terminal } from './ductwork.ts';
import type { Found } from './found.ts';
import { sideOf } from './model.ts';
import { stockedRounds } from './sizes.ts';

/** m/s: 900, 700 and 500 fpm. Sources: `air.velocity`, `air.face-velocity`. */
const metalSupply = 4.572;
const flexibleOrReturn = 3.556;
const returnFace = 2.54;

/** Air speed in every section and through every face, against what stays quiet. */
export const velocityFindings = (model: AirModel, flows: AirFlows, bought: Bought): Found[] => [
  ...model.sections.map((x) => inDuct(x, flows, bought)),
  ...model.terminals.map((t) => throughFace(t, model, flows)),
];

function inDuct(x: DuctSection, flows: AirFlows, bought: Bought): Found {
  const q = flows.sections[x.id] ?? 0;
  const { recorder, steps } = recordWorking();
  recorder.step('Q', 'solved', { residual: flows.residual }, q, 'm³/s', 'air.flows');
  recorder.step('v', 'Q / A', { Q: q, A: x.area }, q / x.area, 'm/s', 'air.velocity');
  const limit = x.side === 'supply' && x.kind !== 'flexible' ? metalSupply : flexibleOrReturn;
  const enough = stockedRounds.find((d) => q / ((Math.PI * d * d) / 4) <= limit);
  const item = bought[x.id];
  return {
    draft: {
      id: `duct-speed:${x.id}`,
      subject: x.id,
      ...(item === undefined ? {} : { item }),
      holdPoint: 'order',
      consequence: 'comfort',
      kind: 'velocity',
      value: { ok: true, value: q / x.area },
      limit: { max: limit },
      source: 'air.velocity',
      working: `air/duct-speed:${x.id}`,
      facts: { name: x.name, ...(enough === undefined ? {} : { enough }) },
    },
    working: steps,
  };
}

function throughFace(t: Terminal, model: AirModel, flows: AirFlows): Found {
  const q = flows.terminals[t.id] ?? 0;
  const limit = sideOf(model, t.section) === 'return' ? returnFace : flexibleOrReturn;
  const { recorder, steps } = recordWorking();
  recorder.step('Q', 'solved', { residual: flows.residual }, q, 'm³/s', 'air.flows');
  recorder.step('v', 'Q / A_face', { Q: q, A_face: t.faceArea }, q / t.faceArea, 'm/s', 'air.face-velocity');
  return {
    draft: {
      id: `face-speed:${t.id}`,
      subject: t.id,
      holdPoint: 'cut',
      consequence: 'comfort',
      kind: 'velocity',
      value: { ok: true, value: q / t.faceArea },
      limit: { max: limit },
      source: 'air.face-velocity',
      working: `air/face-speed:${t.id}`,
      facts: { name: t.name, area: q / limit, count: Math.ceil(q / limit / t.faceArea) },
    },
    working: steps,
  };
}
