import type { Sheet } from '../sheet/drawing.ts';
import type { Block } from './block.ts';
import { drawingPages } from './drawings.ts';
import { cutListPages } from './pages/cutList.ts';
import { eveningPages } from './pages/evenings.ts';
import { holdPointPages } from './pages/holdPoints.ts';
import { loadsPage } from './pages/loads.ts';
import { papersPage } from './pages/papers.ts';
import { pressurePage } from './pages/pressure.ts';
import { readingPages } from './pages/readings.ts';
import { recordPages } from './pages/record.ts';
import { shoppingPages } from './pages/shopping.ts';
import { sourcePages } from './pages/sources.ts';
import { workPages } from './pages/work.ts';
import { workingPages } from './pages/workings.ts';
import { type PartId, partIds } from './partNames.ts';
import type { SetInput } from './setInput.ts';

type Pages = (input: SetInput, sheets: readonly Sheet[]) => readonly Block[];

/** Cover and cautions go with every choice of them. */
const parts: Readonly<Record<PartId, Pages>> = {
  checks: holdPointPages,
  numbers: (input) => [...loadsPage(input), ...pressurePage(input)],
  drawings: (input, sheets) => [...drawingPages(sheets), ...cutListPages(input)],
  papers: papersPage,
  buy: shoppingPages,
  work: (input) => [...workPages(input), ...eveningPages(input)],
  readings: (input) => [...readingPages(input), ...recordPages(input)],
  workings: workingPages,
  sources: sourcePages,
};

/** The pages of the parts chosen, in the set's own order. */
export const pagesOf = (chosen: readonly PartId[], input: SetInput, sheets: readonly Sheet[]): Block[] =>
  partIds.filter((id) => chosen.includes(id)).flatMap((id) => parts[id](input, sheets));
