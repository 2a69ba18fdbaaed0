import { cutLength, straightCuts } from '@kneewall/documents';
import type { Plan } from '@kneewall/engine';
import { Scroll } from '../../../look/Scroll.tsx';
import { useUnits } from '../../../services.ts';

/** What is cut from each length and each bag, in order. */
export function StraightCuts({ plan }: { plan: Plan }) {
  const units = useUnits();
  return (
    <>
      <Scroll label="From lengths and bags">
        <table className="table">
          <thead>
            <tr>
              {['From', 'Cut, in order'].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {straightCuts(plan, units).map(({ from, cuts }) => (
              <tr key={from}>
                <th scope="row">{from}</th>
                <td>
                  {cuts
                    .map(({ piece, what, length }) =>
                      piece === ''
                        ? `${cutLength(length, units)} ${what}`
                        : `${cutLength(length, units)} for “${piece}”${what === 'cut' ? '' : ` (${what})`}`,
                    )
                    .join('; ')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        Flexible duct is cut longer than its run: the slack entered for it, and two inches over the collar at each end.
        Pipe and conduit longer than a length are joined where it ends; pipe foam is butted and taped wherever one ends
        (common practice, no source). Timber is never joined. It carries people and the unit: a licensed engineer first
        where joists are short of strength.
      </p>
    </>
  );
}
