import { type DuctFacts, madeOf, sizeWords } from '@kneewall/documents';
import { FoldedTable } from '../../../look/FoldedTable.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { useUnits } from '../../../services.ts';

type Kind = 'flow' | 'velocity' | 'pressure' | 'length';
const cell = (value: number | undefined, kind: Kind) =>
  value === undefined ? 'unknown' : <Quantity value={value} kind={kind} />;

/** The same as the picture, in two tables. */
export function DuctTables({ facts, hardest }: { facts: DuctFacts; hardest: ReadonlySet<string> }) {
  const units = useUnits();
  const names = new Map(facts.ducts.map((d) => [d.id, `${d.tag} ${d.name}`]));
  return (
    <>
      <FoldedTable
        title="The ducts in numbers"
        columns={['Section', 'Joins', 'Size inside', 'Length', 'Flow', 'Speed', 'Pressure lost', 'Hardest way']}
      >
        {facts.ducts.map((d) => (
          <tr key={d.id}>
            <th scope="row">{names.get(d.id)}</th>
            <td>{d.from === undefined ? 'the air handler' : (names.get(d.from) ?? d.from)}</td>
            <td>
              {sizeWords(d.size, units)}, {madeOf[d.kind]}
            </td>
            <td>{cell(d.length, 'length')}</td>
            <td>{cell(d.flow, 'flow')}</td>
            <td>{cell(d.speed, 'velocity')}</td>
            <td>{cell(d.drop, 'pressure')}</td>
            <td>{hardest.has(d.id) ? 'yes' : 'no'}</td>
          </tr>
        ))}
      </FoldedTable>
      <FoldedTable
        title="Registers and grilles in numbers"
        columns={['Mark', 'Name', 'Room', 'At the end of', 'Face', 'Flow', 'Pressure lost']}
      >
        {facts.faces.map((f) => (
          <tr key={f.id}>
            <th scope="row">{f.tag}</th>
            <td>{f.name}</td>
            <td>{f.room ?? 'unknown'}</td>
            <td>{f.section === undefined ? 'unknown' : (names.get(f.section) ?? f.section)}</td>
            <td>{sizeWords(f.size, units)}</td>
            <td>{cell(f.flow, 'flow')}</td>
            <td>{cell(f.drop, 'pressure')}</td>
          </tr>
        ))}
      </FoldedTable>
    </>
  );
}
