import type { Outcome, Spread, TradeResults } from '@kneewall/engine';
import { printQuantity, type QuantityKind, type System } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { type Block, body, bold, lead, page, part, table } from '../block.ts';
import { orUnknown } from '../orUnknown.ts';
import type { SetInput } from '../setInput.ts';

/** The units weighed, the air that the chosen one moves, and what uses up the blower's pressure. */
export function pressurePage({ plan, units }: SetInput): Block[] {
  const { equipment, air, loads } = plan.trades;
  if (!equipment) return [];
  return [
    page('Unit and pressure'),
    lead('What each unit gives on the cold night, and what the ducts ask of the blower.'),
    candidateTable(Object.values(equipment.candidates), units),
    ...(air ? airParts(air, loads?.rooms, units) : []),
  ];
}

const likelyOf = (outcome: Outcome<Spread>, kind: QuantityKind, units: System): string =>
  orUnknown(outcome, (s) => printQuantity(s.likely, kind, units));

const candidateTable = (candidates: readonly TradeResults['equipment']['candidates'][string][], units: System): Block =>
  table(
    [
      { head: 'Unit', width: '*' },
      { head: 'Gives on the cold night', width: 75, right: true },
      { head: 'More than needed', width: 75, right: true },
      { head: 'Holds alone down to', width: 70, right: true },
      { head: 'Cooling, sensible', width: 75, right: true },
    ],
    candidates.map((c) => [
      c.chosen ? [bold(c.name), ' (the plan is made for it)'] : c.name,
      likelyOf(c.heatingCapacity, 'power', units),
      likelyOf(c.heatingSpare, 'power', units),
      orUnknown(c.balancePoint, (t) => printQuantity(t, 'temperature', units)),
      likelyOf(c.coolingSensible, 'power', units),
    ]),
  );

function airParts(air: TradeResults['air'], names: TradeResults['loads']['rooms'] | undefined, units: System): Block[] {
  const range = (outcome: Outcome<Spread>, kind: QuantityKind) =>
    orUnknown(outcome, (s) => formatRange(s, kind, units));
  return [
    part('The air it moves'),
    body(`Flow: ${range(air.flow, 'flow')}. External static pressure: ${range(air.staticPressure, 'pressure')}.`),
    ...(air.ladder.ok
      ? [
          body(
            'What uses up the pressure on the hardest way through the house, from the return grille to the register:',
          ),
          table(
            [
              { head: 'Piece', width: '*' },
              { head: 'Side', width: 80 },
              { head: 'Pressure lost', width: 90, right: true },
            ],
            air.ladder.value.map((rung) => [rung.piece, rung.side, printQuantity(rung.drop, 'pressure', units)]),
          ),
        ]
      : []),
    table(
      [
        { head: 'Room', width: '*' },
        { head: 'Wanted', width: 80, right: true },
        { head: 'Because of', width: 80 },
        { head: 'Reaches it', width: 120, right: true },
      ],
      Object.values(air.rooms).map((room) => [
        bold(names?.[room.room]?.name ?? room.room),
        orUnknown(room.wanted, (flow) => printQuantity(flow, 'flow', units)),
        room.governs,
        range(room.reaches, 'flow'),
      ]),
      { title: 'The air that reaches each room' },
    ),
  ];
}
