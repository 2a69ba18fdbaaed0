import {
  type EffectLine,
  type EffectRange,
  effectColumns,
  effectLines,
  type LogEffect,
  logEffectKind,
  type Plan,
} from '@kneewall/engine';
import type { Range } from '@kneewall/project';
import { Scroll } from '../../../look/Scroll.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { JobOffer } from '../JobOffer.tsx';
import { OutcomeOr } from '../OutcomeOr.tsx';

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
  const lines = effectLines(effect);
  const shown = effectColumns.flatMap(([id, head]) => {
    const range = effect[id];
    return range ? [{ id, head, range }] : [];
  });
  return (
    <Scroll label="What it changes">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">What it changes</th>
            <th scope="col">By the plan alone</th>
            {shown.map(({ id, head }) => (
              <th scope="col" key={id}>
                {head}
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
              {shown.map(({ id, range }) => (
                <td key={id}>
                  <Quantity value={of(range.likely)} kind={kind} significant={3} />
                  {of(range.low) !== of(range.high) && (
                    <span className="log-range">
                      {' '}
                      (<QuantityRange range={endsOf(range, of)} kind={kind} />)
                    </span>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

const endsOf = ({ low, likely, high }: EffectRange, of: EffectLine['of']): Range => ({
  low: of(low),
  likely: of(likely),
  high: of(high),
});
