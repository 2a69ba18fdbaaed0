import { emptyProject, type Problem } from '@kneewall/project';
import { useState } from 'react';
import { saveFile } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { FileButton } from '../../look/FileButton.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { goTo } from '../../route/route.ts';
import { openText, useServices } from '../../services.ts';
import { ProblemList } from './ProblemList.tsx';

type Refused = { readonly name: string; readonly problems: readonly Problem[] };

/** Open, save, begin. A file that is refused leaves the open project as it was. */
export function FileSheet() {
  const { session } = useServices();
  const [refused, setRefused] = useState<Refused | undefined>();
  const open = async (file: File | undefined) => {
    if (!file) return;
    const problems = openText(session, await file.text(), file.name);
    setRefused(problems.length > 0 ? { name: file.name, problems } : undefined);
    if (problems.length === 0) goTo({ screen: 'home' });
  };
  const begin = () => {
    session.open(emptyProject, { kind: 'new' });
    goTo({ screen: 'first' });
  };
  return (
    <Sheet title="The file">
      <p>The whole project is one plain file. It opens on any device, with no server.</p>
      <div className="buttons">
        <Button look="strong" onClick={() => saveFile(session.now().project)}>
          Save as a file
        </Button>
        <FileButton label="Open a file" accept=".json,application/json" choose={([file]) => void open(file)} />
        <Button onClick={begin}>New project</Button>
      </div>
      {refused && (
        <div role="alert" className="refused">
          <p>
            <strong>“{refused.name}” was not opened.</strong> Your project is as it was.
          </p>
          <ProblemList problems={refused.problems} />
        </div>
      )}
    </Sheet>
  );
}
