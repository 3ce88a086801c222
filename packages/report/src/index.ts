export { type DutyCalendarOf, dutyCalendar } from "./calendar/duty-calendar.ts";
export { armsReachDrawing, type ReachDrawing, type ReachState } from "./drawings/arms-reach.ts";
export { cableLayers } from "./drawings/cable-layers.ts";
export type { CableDrawing, DrawnLayer } from "./drawings/cable-section.ts";
export { classificationMark } from "./drawings/classification-mark.ts";
export { type LineDiagramOptions, lineDiagram } from "./drawings/line-diagram.ts";
export { type MarginBar, marginBar } from "./drawings/margin-bar.ts";
export { type ProbeDrawing, probeDrawing } from "./drawings/probe.ts";
export { type LayerStanding, type LayersDrawing, protectionLayers } from "./drawings/protection-layers.ts";
export { ringDrawing } from "./drawings/ring.ts";
export type { RingDrawing, RingDrawingMark, RingDrawingPoint } from "./drawings/ring-drawing.ts";
export { type DrawnTrend, trendSparkline } from "./drawings/then-and-now.ts";
export { timeCurrentCurve } from "./drawings/time-current.ts";
export * from "./input.ts";
export { CALCULATION } from "./locales/calculations-en.ts";
export { DUTY } from "./locales/duties-en.ts";
export * from "./locales/en.ts";
export * from "./locales/labels.ts";
export { OPEN } from "./locales/outcome-en.ts";
export { REASONING, TOPIC_GROUP } from "./locales/reasoning-en.ts";
export { renderArgument } from "./text/argument.ts";
export type { ChoiceWords } from "./text/choices/choice-words.ts";
export { type ChoicesOptions, renderChoices } from "./text/choices/comparison.ts";
export { renderConclusion, renderResults } from "./text/conclusion.ts";
export { type OwnFiguresOptions, renderOwnFigures } from "./text/own-figures/own-figures.ts";
export { renderReasoning } from "./text/reasoning.ts";
export { renderRing } from "./text/ring.ts";
export { renderWeighing, type WeighingOptions } from "./text/weighing.ts";
export { printable, wrapped } from "./text/wrap.ts";
export { type ArgumentLine, argumentLines } from "./words/argument.ts";
export { comparisonWords, decidingComparison, decidingFacts, sides } from "./words/comparison.ts";
export { type DutyWords, dutyColumn, dutyLine, dutyWords, isForOthers, passOnWords } from "./words/duty.ts";
export * from "./words/figure.ts";
export { folderWords } from "./words/folder.ts";
export { givenName } from "./words/given-name.ts";
export { misfitTitle, misfitWords } from "./words/misfit.ts";
export {
  dismissedWords,
  investigateWords,
  type OpenPointContext,
  openPointsColumn,
  openPointWords,
} from "./words/open-point.ts";
export { placeWords } from "./words/place.ts";
export * from "./words/probability.ts";
export * from "./words/reasoning.ts";
export { differingWords, otherwiseWords } from "./words/reasoning-known.ts";
export { drawingOf as ringDrawingOf, ringMisfit, ringSentences } from "./words/ring.ts";
export type { RingData } from "./words/ring-data.ts";
export { issuedAt, type StandingSignature, standingSignatures } from "./words/signature.ts";
export { type TrendLine, trendLines } from "./words/then-and-now.ts";
export { gradeWords, isExpected, verdictOf, verdictShort } from "./words/verdict.ts";
export { placesWorstFirst, type Ranked, worstFirst } from "./words/worst-first.ts";
