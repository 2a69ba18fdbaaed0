import type { Draft } from '../plan/judge.ts';
import { attempt, type Outcome } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import type { CircuitResult } from './result.ts';

/** A number of the cable with the working of one line that ends in it. */
function told<T extends number>(value: Outcome<T>, unit: string): { value: Outcome<T>; working: Working } {
  const { recorder, steps } = recordWorking();
  if (value.ok) recorder.step('x', 'table', {}, value.value, unit, 'circuit.between');
  return { value, working: steps };
}

/** The cable between the units: enough conductors before anything is closed, not too long, thick and screened as asked. */
export function betweenFindings({ between }: CircuitResult, view: PlanView): Drafts {
  if (!between) return { drafts: [], workings: {} };
  const input = view.project.routes.wires.between;
  const s = scenario();
  const size = s.maybe(input.size);
  const { longest, wanted, conductors, length } = between;
  const found = [
    draft('between-conductors', 'close', 'money', 'count', told(wanted.ok ? conductors : wanted, ''), {
      limit: wanted.ok ? { min: wanted.value } : {},
    }),
    ...(longest === undefined
      ? []
      : [
          draft(
            'between-length',
            'order',
            'money',
            'length',
            told(
              attempt(() => s.of(input.length)),
              'm',
            ),
            {
              limit: { max: longest },
              ...(length.ok ? { value: length } : {}),
            },
          ),
        ]),
    ...(between.size === undefined || size === undefined
      ? []
      : [
          draft('between-size', 'order', 'harm', 'wire-size', told({ ok: true, value: size }, 'mm²'), {
            limit: { min: between.size * 0.98 },
            facts: { asked: between.size, own: size },
          }),
        ]),
    ...(between.screened
      ? [
          draft(
            'between-screened',
            'order',
            'money',
            'count',
            told(
              attempt(() => (s.choice(input.screened) === 'yes' ? 1 : 0)),
              '',
            ),
            {
              limit: { min: 1 },
            },
          ),
        ]
      : []),
  ];
  return {
    drafts: found.map((f) => f.draft),
    workings: Object.fromEntries(found.map((f) => [f.draft.working, f.working])),
  };
}

function draft(
  id: string,
  holdPoint: Draft['holdPoint'],
  consequence: Draft['consequence'],
  kind: Draft['kind'],
  { value, working }: { value: Draft['value']; working: Working },
  rest: Pick<Draft, 'limit' | 'facts'> & { readonly value?: Draft['value'] },
): { readonly draft: Draft; readonly working: Working } {
  return {
    draft: {
      id,
      subject: 'between',
      holdPoint,
      consequence,
      kind,
      value,
      source: 'circuit.between',
      working: `circuit/${id}`,
      ...rest,
    },
    working,
  };
}
