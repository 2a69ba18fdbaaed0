import { coldMemo, findAll, firstFinders, marksOf, type Results } from '@kneewall/engine';
import { applyEdit, emptyProject, type Project, type System } from '@kneewall/project';
import { differenceOf } from './difference.ts';
import type { LastSent, OnItsWay, ToPlanner } from './messages.ts';

let project: Project = emptyProject;
let units: System = 'us';
let results: Results = {};
let revision = 0;
let due = false;
const memo = coldMemo();
let last: LastSent | undefined;

/** Words, lists and the trades that sum up are fetched once it has been said how what decides stands: nothing waits for them. */
let whole: typeof import('@kneewall/engine/plan') | undefined;
let fetching = false;

const send = (message: OnItsWay): void => self.postMessage(message);

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
    if (whole) {
      const { plan, wanted } = whole.evaluate(project, results, { units, memo });
      const ms = performance.now() - start;
      const difference = differenceOf(last, { plan, wanted });
      send({ type: 'changed', revision, difference, ms });
      last = { plan, wanted };
      return;
    }
    send({ type: 'marks', revision, marks: marksOf(findAll(project, results, memo, firstFinders)) });
    if (!fetching) void fetchWhole();
  } catch {
    send({ type: 'failed', revision });
  }
}

async function fetchWhole(): Promise<void> {
  fetching = true;
  try {
    whole = await import('@kneewall/engine/plan');
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
