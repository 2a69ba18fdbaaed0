export { readDataSheet, type SheetRows } from './dataSheet/read.ts';
export { blobHasher, canonicalJson, canonicalName, hashOf, hashOfBytes, projectText } from './document/canonical.ts';
export type { Edit } from './document/edit.ts';
export { applyEdit, inverse } from './document/edit.ts';
export { inspect as inspectProject } from './document/inspect.ts';
export { projectJsonSchema } from './document/jsonSchema.ts';
export type { SchemaNode } from './document/nodes.ts';
export { nodeAt, rootNode, schemaPaths } from './document/nodes.ts';
export type { Opened } from './document/open.ts';
export { checkProject, openProject } from './document/open.ts';
export { pathLabel } from './document/pathLabel.ts';
export type { Checked, Path, Problem, ProblemCode } from './document/problem.ts';
export { asked, dotted, refused } from './document/problem.ts';
export { inIdOrder, inOrder, resolveProject, resolver } from './document/resolve.ts';
export type { Chosen, Given, Missing, Resolved, ResolvedProject } from './document/resolved.ts';
export { valueAt } from './document/valueAt.ts';
export { areaOfOutline, crossingOf } from './drawn/outline.ts';
export { bendsOfWay, lengthOfWay } from './drawn/way.ts';
export type {
  Faults,
  LogBytes,
  LogClock,
  LogColumns,
  LogEncoding,
  LogEnds,
  LogEntry,
  LogFault,
  LogHours,
  LogPlan,
  LogQuantity,
  LogRead,
  LogTable,
  LogUnit,
} from './log/index.ts';
export {
  clockSeen,
  dayText,
  encodingOf,
  endLength,
  faultWords,
  hourMeans,
  isLogTable,
  logEndsOf,
  logQuantities,
  logQuantityIds,
  logTextOfBytes,
  logUnits,
  planLog,
  quantityOf,
  readLog,
  readLogText,
  tailFrom,
  unitsOfDimension,
} from './log/index.ts';
export { type PriceChange, priceChanges } from './prices/changes.ts';
export { type ColumnMap, type PriceColumn, priceColumns } from './prices/heads.ts';
export { priceIn } from './prices/money.ts';
export { type PricesRead, type RowLeft, readPrices } from './prices/read.ts';
export type { Parsed, QuantityKind, System } from './quantity/index.ts';
export { glued, monthNames, parseQuantity, printQuantity, shortMonths } from './quantity/index.ts';
export type { Bunch, Question } from './questions/first.ts';
export { bunchesFor, fieldOf, firstBunches } from './questions/first.ts';
export type { Entered, Known, Range } from './schema/entered.ts';
export { knownWords } from './schema/entered.ts';
export type { FieldMeta } from './schema/field.ts';
export { idPattern } from './schema/field.ts';
export type { Project } from './schema/project.ts';
export { emptyProject, projectSchema, schemaVersion } from './schema/project.ts';
export { splitTable } from './table/splitTable.ts';
export type { TradeId } from './trade.ts';
export { tradeIds } from './trade.ts';
