export { type LayerBetween, type LayersBetween, layersBetween } from "./layers-between.ts";
export * from "./observation-reasoning.ts";
export { type OpeningSection, openingSection } from "./opening-section.ts";
export * from "./topic-issues.ts";
export * from "./topic-reasoning.ts";
export * from "./worked-facts.ts";
