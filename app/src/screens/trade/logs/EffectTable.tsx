import { type EffectFigures, type EffectRange, type LogEffect, logEffectKind, type Plan } from '@kneewall/engine';
import type { QuantityKind, Range } from '@kneewall/project';
import { Scroll } from '../../../look/Scroll.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { JobOffer } from '../JobOffer.tsx';
import { OutcomeOr } from '../OutcomeOr.tsx';

type Line = { readonly name: string; readonly kind: QuantityKind; readonly of: (f: EffectFigures) => number };

const always: readonly Line[] = [
  { name: 'Heat on the cold night', kind: 'power', of: (f) => f.night },
  { name: 'Electricity for the unit, a year', kind: 'energy', of: (f) => f.electricity },
];
const onOwnPower: readonly Line[] = [
  { name: 'Fuel of the generator, a year', kind: 'volume', of: (f) => (f.power?.litres ?? 0) / 1000 },
  { name: 'Hours of the generator, a year', kind: 'count', of: (f) => f.power?.generator ?? 0 },
  { name: 'Nights the battery gives out without it', kind: 'count', of: (f) => f.power?.emptyNights ?? 0 },
];
const columns = { loss: 'With the log’s loss', power: 'With the log’s power', both: 'With both' } as const;

/** The plan's main numbers before and after, each with the range that the log leaves. */
export function EffectTable({ plan }: { readonly plan: Plan }) {
  const { logEffect } = plan.season;
  if (!logEffect.ok && logEffect.because === 'pending')
    return (
      <JobOffer kind={logEffectKind} name="What it changes">
        What it changes: heat on the cold night, electricity, fuel and battery nights before and after. Whole years are
        run: about a minute.
      </JobOffer>
    );
  return (
    <OutcomeOr outcome={logEffect} what="What it changes">
      {(effect) => <Table effect={effect} />}
    </OutcomeOr>
  );
}

function Table({ effect }: { readonly effect: LogEffect }) {
  const lines = effect.before.power ? [...always, ...onOwnPower] : always;
  const shown = (['loss', 'power', 'both'] as const).flatMap((id) => (effect[id] ? [[id, effect[id]] as const] : []));
  return (
    <Scroll label="What it changes">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">What it changes</th>
            <th scope="col">By the plan alone</th>
            {shown.map(([id]) => (
              <th scope="col" key={id}>
                {columns[id]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ name, kind, of }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                <Quantity value={of(effect.before)} kind={kind} significant={3} />
              </td>
              {shown.map(([id, range]) => (
                <td key={id}>
                  <Quantity value={of(range.likely)} kind={kind} significant={3} />{' '}
                  <span className="log-range">
                    (<QuantityRange range={endsOf(range, of)} kind={kind} />)
                  </span>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

const endsOf = ({ low, likely, high }: EffectRange, of: Line['of']): Range => ({
  low: of(low),
  likely: of(likely),
  high: of(high),
});
