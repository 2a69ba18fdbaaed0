import { dotted, type Problem } from '@kneewall/project';

/** Problems as they are: where, what was found, what is allowed, what to do. */
export function ProblemList({ problems }: { problems: readonly Problem[] }) {
  return (
    <ul className="problems">
      {problems.slice(0, 50).map((p) => (
        <li key={`${p.code} ${dotted(p.path)}`}>
          <p>
            <strong>{p.mend}</strong>
          </p>
          <p className="field-help">
            {p.path.length > 0 && <>Place: {placeOf(p.path)}. </>}
            {p.found !== undefined && <>Found: {said(p.found)}. </>}
            {p.allowed !== undefined && <>Allowed: {said(p.allowed)}.</>}
          </p>
        </li>
      ))}
    </ul>
  );
}

/** A place in a table is a row and the head of its column; any other is a path in the document. */
const placeOf = (path: Problem['path']): string =>
  path[0] === 'row' ? `row ${path[1]}${path[2] === undefined ? '' : `, “${path[2]}”`}` : dotted(path);

/** A found or allowed value in words. */
function said(value: unknown): string {
  if (Array.isArray(value)) return value.join(', ');
  if (value === null || typeof value !== 'object') return String(value);
  return Object.entries(value)
    .map(([key, v]) => `${key} ${String(v)}`)
    .join(', ');
}
