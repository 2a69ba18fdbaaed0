import { cutLength, cutMeasures, holeSize, type LaidSheet, type MarkedPiece } from '@kneewall/documents';
import { Scroll } from '../../../look/Scroll.tsx';
import { useUnits } from '../../../services.ts';

/** Everything to mark out on one piece, from its corner. */
export function PieceTable({ marked }: { marked: MarkedPiece }) {
  const units = useUnits();
  const say = (m: number | undefined) => (m === undefined ? '' : cutLength(m, units));
  return (
    <Scroll label={`Measures of ${marked.mark}`}>
      <table className="table">
        <thead>
          <tr>
            {['To mark out', 'Sideways', 'Up'].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {cutMeasures(marked).map((m) => (
            <tr key={`${m.what} ${m.sideways} ${m.up}`}>
              <th scope="row">{m.what}</th>
              <td>{say(m.sideways ?? m.length)}</td>
              <td>{say(m.up)}</td>
            </tr>
          ))}
          {marked.holes.map((h) => (
            <tr key={h.name}>
              <th scope="row">
                Hole {holeSize(h.shape, units)} for “{h.name}”, {h.side}: {h.how}
              </th>
              <td>{say(h.sideways)}</td>
              <td>{say(h.up)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** The cuts that go right through, in the order in which they are made. */
export function CutOrder({ sheet }: Pick<LaidSheet, 'sheet'>) {
  const units = useUnits();
  const kept = sheet.rests.filter((r) => r.remnant !== undefined);
  return (
    <details className="fold">
      <summary>
        <span className="fold-title">The cuts in order, and what is left</span>
      </summary>
      <ol>
        {sheet.cuts.map(({ from, to }, i) => (
          <li key={`${from.join(' ')} ${to.join(' ')}`}>
            {i + 1}{' '}
            {from[0] === to[0]
              ? `Upright, ${cutLength(from[0], units)} from the sheet’s left`
              : `Level, ${cutLength(from[1], units)} from the sheet’s bottom`}
          </li>
        ))}
      </ol>
      <ul>
        {kept.map((r) => (
          <li key={`${r.x} ${r.y}`}>
            Keep {r.remnant}: {cutLength(r.width, units)} × {cutLength(r.height, units)}
          </li>
        ))}
      </ul>
    </details>
  );
}
