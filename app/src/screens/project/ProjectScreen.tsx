import { nodeAt } from '@kneewall/project';
import { FormNode } from '../../form/FormNode.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { ViewSwitches } from '../../shell/ViewSwitches.tsx';
import { recordParts } from '../../words/words.ts';
import { DeviceSheet } from './DeviceSheet.tsx';
import { FileSheet } from './FileSheet.tsx';
import { OthersSheet } from './OthersSheet.tsx';
import { PapersSheet } from './PapersSheet.tsx';
import { ProblemsSheet } from './ProblemsSheet.tsx';
import './Project.css';

/** The project as a thing: its file, where it is kept, what else is on this device, and what belongs to no single trade. */
export function ProjectScreen() {
  return (
    <>
      <h1>Project and files</h1>
      <div className="project-grid">
        <FileSheet />
        <PapersSheet />
        <DeviceSheet />
        <Sheet title="How it is shown">
          <div className="switches">
            <ViewSwitches />
          </div>
          <p className="field-help">Nothing stored changes with units or theme. “Sunlight” is for outdoors.</p>
        </Sheet>
        <OthersSheet />
      </div>
      <ProblemsSheet />
      {recordParts.map((path) => {
        const node = nodeAt(path)?.node;
        return node ? (
          <Sheet key={path.join('.')} title={node.meta.label}>
            <FormNode node={node} path={path} depth={0} />
          </Sheet>
        ) : null;
      })}
    </>
  );
}
