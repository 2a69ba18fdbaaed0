import { type PaperworkResult, type WorkRow, workTitle } from '@kneewall/engine';
import { Scroll } from '../../../look/Scroll.tsx';
import { Sheet } from '../../../look/Sheet.tsx';

const who = { us: 'you', licensed: 'a licensed person' } as const;

/** Work that laws, makers and insurers keep for licensed people: who is to do it, and who wants whom. */
export function WorkSheet({ result: { works, papers } }: { result: PaperworkResult }) {
  const asked = (row: WorkRow): string => {
    const wanted = papers.filter((p) => row.wanted.includes(p.id)).map((p) => p.asker ?? p.name);
    if (wanted.length > 0) return wanted.join(', ');
    return row.silent.length > 0 || row.free.length === 0 ? 'not known: ask' : 'nobody, by what you entered';
  };
  return (
    <Sheet title="Work that is usually for licensed people">
      <Scroll label="Work that is usually for licensed people">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Work</th>
              <th scope="col">Who does it</th>
              <th scope="col">A licensed person is asked for by</th>
            </tr>
          </thead>
          <tbody>
            {works.map((row) => (
              <tr key={row.work}>
                <th scope="row">{workTitle[row.work]}</th>
                <td>{row.hands ? who[row.hands] : 'not settled'}</td>
                <td>{asked(row)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        Permits, inspections and insurance count here; what a warranty or an incentive wants stands under Findings.
        Local law decides, and no answer is never a yes.
      </p>
    </Sheet>
  );
}
