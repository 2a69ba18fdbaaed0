export { type Verdict, verdictOf } from './access/verdict.ts';
export { balanceSentence, beyondWords, damperWords, shortWords } from './air/balance/messages.ts';
export type { AirBalance, DamperSetting, RoomBalance, SeasonBalance } from './air/balance/result.ts';
export type { AirCurves } from './air/curves.ts';
export type { HouseAir, ShutDoors } from './air/doors/houseAir.ts';
export { shutSolver, withEnough } from './air/doors/shutDoors.ts';
export { ductHeat } from './air/ductHeat.ts';
export type { AirModel } from './air/ductwork.ts';
export { nominalAir, solveFlows } from './air/flows.ts';
export {
  changeWords,
  nextSizeWords,
  passesWords,
  pricesWords,
  relaxationWords,
  runnerUpWords,
  sizingSentence,
  spaceTakesWords,
} from './air/sizing/messages.ts';
export { stockedNeighbours } from './air/sizing/neighbours.ts';
export type { DuctSizing } from './air/sizing/sizeDucts.ts';
export { solveSizing } from './air/sizing/solveSizing.ts';
export type { SizingSection, SizingSpec } from './air/sizing/spec.ts';
export type { DuctShape } from './air/sizing/stock.ts';
export { sizeName } from './circuit/sizeName.ts';
export { binsOfHours } from './climate/bins.ts';
export type { Place } from './climate/result.ts';
export { rowsOfYear } from './climate/rowsOfYear.ts';
export { estimatedCloud, skyTemperatures } from './climate/skyTemperatures.ts';
export { syntheticYear } from './climate/syntheticYear.ts';
export { closureResidual } from './climate/weather/inspectYear.ts';
export type { WeatherFormat, WeatherRead } from './climate/weather/read.ts';
export { readWeather, sniffWeather } from './climate/weather/read.ts';
export { readRecorded } from './climate/weather/recordedYear.ts';
export type { WeatherYear } from './climate/weather/weatherYear.ts';
export { tiesOfYear } from './climate/winters/tiesOfYear.ts';
export { winterMaker } from './climate/winters/winterYear.ts';
export { dailyRows, degreeDayBase, factsOfYear, monthsOfYear } from './climate/yearFacts.ts';
export { moveWords } from './commissioning/balancing/balanceWords.ts';
export { causeWords } from './commissioning/causes/causeWords.ts';
export type { FaultKind } from './commissioning/causes/faults.ts';
export type { NextReading } from './commissioning/causes/next.ts';
export { bagFlow } from './commissioning/kernels/bag.ts';
export { heatsWords, untoldWords } from './commissioning/logs/beside/messages.ts';
export { changeOf, changeSuspect, dayWords } from './commissioning/logs/changeWords.ts';
export { logFitJob, logFitKind } from './commissioning/logs/logJob.ts';
export { heatFromWords, weakWords } from './commissioning/logs/messages.ts';
export type { Log, LogAnswers } from './commissioning/logs/result.ts';
export { type LogChange, placeOfTaking, type Taking, takeFromLog, takings } from './commissioning/logs/takeFromLog.ts';
export { lookWords, readingName, readingWords } from './commissioning/readingWords.ts';
export type { CommissioningResult, Visit, VisitFound } from './commissioning/result.ts';
export type { Means } from './commissioning/visit.ts';
export type { AgreedPoint, Agreement } from './coupling/agreement.ts';
export type { ControlWay, Foresight } from './coupling/foresight/foresightAnswers.ts';
export { countOf, savedBy } from './coupling/foresight/foresightAnswers.ts';
export type { DayCurves, HouseYear } from './coupling/houseYear/answers.ts';
export type { Improvement } from './coupling/houseYear/improvements.ts';
export type { Measure } from './coupling/houseYear/measures.ts';
export type { YearTable } from './coupling/houseYear/table.ts';
export { houseLayout } from './coupling/houseYear/table.ts';
export type { LifeCosts, LifePart, UnitLife } from './coupling/lifeCost/lifeCosts.ts';
export { inHundreds } from './coupling/lifeCost/lifeCosts.ts';
export { type EffectLine, effectColumns, effectLines } from './coupling/logEffect/effectLines.ts';
export { type EffectRange, type LogEffect, logEffectKind } from './coupling/logEffect/logEffectJob.ts';
export { type OwnJob, ownJob } from './coupling/ownJob.ts';
export type { DarkWeek } from './coupling/power/darkWeek.ts';
export type { GridYear } from './coupling/power/grid/gridYear.ts';
export type { ChangeKind } from './coupling/power/helps/change.ts';
export { yearsTo } from './coupling/power/helps/fade.ts';
export type { Help, PowerHelps } from './coupling/power/helps/helpsAnswers.ts';
export { steps as helpSteps } from './coupling/power/helps/sizes.ts';
export { householdDay } from './coupling/power/householdDay.ts';
export type { HeldBack, PowerYear } from './coupling/power/powerAnswers.ts';
export type { PowerSizes } from './coupling/power/powerSizes.ts';
export { powerReady } from './coupling/power/powerYear.ts';
export type { RunHours, UnitYear } from './coupling/season/unitAnswers.ts';
export type { Way, Ways } from './coupling/ways/compareWays.ts';
export { hardSteps } from './coupling/ways/hardSteps.ts';
export { recordedKind } from './coupling/winters/recordedJob.ts';
export type { Recorded } from './coupling/winters/recordedRows.ts';
export { replayedHours } from './coupling/winters/sizesGrid.ts';
export type { WinterSizes, Winters } from './coupling/winters/wintersAnswers.ts';
export { wintersKind } from './coupling/winters/wintersJob.ts';
export { heldAirflow } from './equipment/blowerCurve.ts';
export {
  apparatusDewPoint,
  bypassAt,
  bypassFactor,
  heatGivenUp,
  transferUnits,
} from './equipment/coil/bypass.ts';
export { coilOf, standardAir } from './equipment/coil/fit.ts';
export { coilOutput } from './equipment/coil/operate.ts';
export type { Winter } from './equipment/result.ts';
export { defrostLoss } from './equipment/sheet.ts';
export type { Found } from './find.ts';
export { findAll, marksOf } from './find.ts';
export { builtTrades } from './finders.ts';
export type { FirstAnswer, FirstWinter } from './first/answer.ts';
export { firstAnswer, unitStatus } from './first/answer.ts';
export type { Measurement } from './first/measurements.ts';
export { measurementsFor, wayToKnow } from './first/measurements.ts';
export {
  answerSentence,
  answerTitles,
  largestUnknown,
  measurementWorth,
  nothingStops,
  sizesWords,
  unitWords,
  winterWords,
} from './first/messages.ts';
export { firstFinders } from './firstFinders.ts';
export type { Job, JobMessage, Results } from './jobs/job.ts';
export { makeJob } from './jobs/job.ts';
export type { JobBlobs, JobHost } from './jobs/run.ts';
export { JobRefused, needsSolver, runJob, splitForHost, tableOfYear } from './jobs/run.ts';
export { piecesOf, type Rows, splitOf } from './jobs/split.ts';
export { nightMost } from './lineset/nightMost.ts';
export { answerAt } from './lineset/place/answerAt.ts';
export { reachMap, waysOn } from './lineset/reach.ts';
export type { Answer, Asked, GoodPlace, Place as UnitPlace, Wall } from './lineset/result.ts';
export type { Study, StudyInputs, Tenths } from './loads/dynamic/study.ts';
export { studyRows } from './loads/dynamic/study.ts';
export { studyKind } from './loads/dynamic/studyJob.ts';
export type { YearInputs } from './loads/dynamic/yearJob.ts';
export { houseYearKind } from './loads/dynamic/yearJob.ts';
export { partShares, partTitle } from './loads/parts.ts';
export type { LoadPart } from './loads/result.ts';
export { sizeStep } from './loads/unitSizes.ts';
export { comesWith, namesOnList } from './materials/list/comesWith.ts';
export {
  amountWords,
  forgottenWords,
  piecesWords,
  scopeTitle,
  shopTitle,
  sinceTitle,
  unusedWords,
} from './materials/listWords.ts';
export type { ListLine, MaterialsResult, Shop, ShoppingList } from './materials/result.ts';
export type { Paper, PaperworkResult, QuoteRow, WorkRow } from './paperwork/result.ts';
export { questionWords, quoteScopeTitle, workTitle } from './paperwork/scopeWords.ts';
export { paperKindTitle, paperStatusTitle, paperTitle } from './paperwork/titles.ts';
export { daysInMonth, monthOfDay, monthStart } from './physics/calendar.ts';
export { highsSolver } from './physics/dispatch/highsSolver.ts';
export type { Evaluated } from './plan/evaluated.ts';
export type { Consequence, Finding, HoldPoint, Limit, Status } from './plan/finding.ts';
export { consequenceWords, holdPointWords, statusWords } from './plan/finding.ts';
export { gatherByHoldPoint, worstFirst } from './plan/holdPoints.ts';
export type { Conditions, ExpectedReading, MaterialLine, Task } from './plan/lines.ts';
export type { Mark } from './plan/mark.ts';
export type { Memo } from './plan/memo.ts';
export { coldMemo } from './plan/memo.ts';
export type { Because, Outcome } from './plan/outcome.ts';
export { becauseWords } from './plan/outcome.ts';
export { plainNumber } from './plan/plainNumber.ts';
export type { HoldPointView, Plan } from './plan/plan.ts';
export type { Printer } from './plan/printer.ts';
export { printerFor } from './plan/printer.ts';
export type { Driver, Spread } from './plan/scenario.ts';
export type { Source, Standing } from './plan/source.ts';
export { taskName } from './plan/taskName.ts';
export { consequenceTitle, formulaTitle, holdPointTitle, knownTitle, tradeTitle } from './plan/titles.ts';
export type { Step, Working } from './plan/working.ts';
export { wordFormulas } from './plan/working.ts';
export type { EvaluateOptions } from './plan.ts';
export { evaluate } from './plan.ts';
export type { TradeResults } from './results.ts';
export { deadlinesOf } from './schedule/deadlines.ts';
export { missingWords } from './schedule/missingWords.ts';
export type { ScheduleResult, Unplaced, WorkAnswers } from './schedule/result.ts';
export { workPlanKind } from './schedule/workJob.ts';

export { engineVersion } from './version.ts';
