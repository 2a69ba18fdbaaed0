import '../withoutEval.ts';
import { coldMemo, evaluate, type Results } from '@kneewall/engine';
import { applyEdit, emptyProject, type Project, type System } from '@kneewall/project';
import type { FromPlanner, ToPlanner } from './messages.ts';

let project: Project = emptyProject;
let units: System = 'us';
let results: Results = {};
let revision = 0;
let due = false;
const memo = coldMemo();

const send = (message: FromPlanner): void => self.postMessage(message);

function take(message: ToPlanner): void {
  revision = message.revision;
  if (message.type === 'open') {
    project = message.project;
    units = message.units;
  } else if (message.type === 'edit') {
    for (const edit of message.edits) project = applyEdit(project, edit).value;
  } else if (message.type === 'units') units = message.units;
  else results = message.results;
}

function plan(): void {
  due = false;
  const start = performance.now();
  try {
    const { plan, wanted } = evaluate(project, results, { units, memo });
    send({ type: 'plan', revision, plan, wanted, ms: performance.now() - start });
  } catch {
    send({ type: 'failed', revision });
  }
}

self.onmessage = ({ data }: MessageEvent<ToPlanner>) => {
  take(data);
  if (due) return;
  due = true;
  // After whatever else is already waiting, so that a burst of edits is planned once.
  setTimeout(plan, 0);
};
