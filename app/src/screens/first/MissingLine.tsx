import { pathLabel } from '@kneewall/project';
import { fieldId } from '../../form/useField.ts';
import { useSession } from '../../services.ts';

/** What is still needed, each a way to its question. */
export function MissingLine({ paths }: { paths: readonly string[] }) {
  const project = useSession((s) => s.project);
  if (paths.length === 0) return null;
  return (
    <p className="field-needed">
      Next, tell:{' '}
      {paths.map((path, i) => (
        <span key={path}>
          {i > 0 && ', '}
          <button
            type="button"
            className="link-button"
            onClick={() => document.getElementById(fieldId(path.split('.')))?.focus()}
          >
            {pathLabel(path, project)}
          </button>
        </span>
      ))}
    </p>
  );
}
