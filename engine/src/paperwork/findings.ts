import { draftsOf } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { dateFindings } from './dateFindings.ts';
import { moneyFindings } from './moneyFindings.ts';
import { paperFindings } from './paperFindings.ts';
import type { PaperworkResult } from './result.ts';
import { workFindings } from './workFindings.ts';

/** What papers are still to be had, who may do which work, what quotes leave out, which unit costs least over its life. */
export const findings = (result: PaperworkResult, view: PlanView): Drafts =>
  draftsOf([
    ...paperFindings(result),
    ...dateFindings(result),
    ...workFindings(result),
    ...moneyFindings(result, view),
  ]);
