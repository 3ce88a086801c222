export { type LayerBetween, type LayersBetween, layersBetween } from "./layers-between.ts";
export { namesKnown } from "./names-known.ts";
export { positionsHeld, reasonObservations } from "./observation-reasoning.ts";
export type { OpeningSection } from "./opening-section.ts";
export { knownFromFindings, type ReasonPlace, type ReasonRequest, reasonAbout } from "./reason-about.ts";
export { RECORDED_PROPERTIES, type RecordedProperty, recordedProperty } from "./recorded/index.ts";
export type * from "./results.ts";
export { answerIssue, topicIssues } from "./topic-issues.ts";
export { kebab, needsOf } from "./worked/index.ts";
