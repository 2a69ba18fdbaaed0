import { coldMemo, findAll, marksOf, type Results } from '@kneewall/engine';
import { applyEdit, emptyProject, type Project, type System } from '@kneewall/project';
import type { FromPlanner, ToPlanner } from './messages.ts';

let project: Project = emptyProject;
let units: System = 'us';
let results: Results = {};
let revision = 0;
let due = false;
const memo = coldMemo();

/** Words, lists and sources are fetched once it has been said how the findings stand: nothing waits for them. */
let teller: typeof import('@kneewall/engine/tell') | undefined;
let fetching = false;

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
    const found = findAll(project, results, memo);
    if (teller) {
      const { plan, wanted } = teller.tellAll(found, results, units, memo);
      send({ type: 'plan', revision, plan, wanted, ms: performance.now() - start });
      return;
    }
    send({ type: 'marks', revision, marks: marksOf(found) });
    if (!fetching) void fetchTeller();
  } catch {
    send({ type: 'failed', revision });
  }
}

async function fetchTeller(): Promise<void> {
  fetching = true;
  try {
    teller = await import('@kneewall/engine/tell');
    planSoon();
  } catch {
    fetching = false;
    send({ type: 'failed', revision });
  }
}

/** After whatever else is already waiting, so that a burst of edits is planned once. */
function planSoon(): void {
  if (due) return;
  due = true;
  setTimeout(plan, 0);
}

self.onmessage = ({ data }: MessageEvent<ToPlanner>) => {
  take(data);
  planSoon();
};
