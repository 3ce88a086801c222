export * from "./figures.ts";
export * from "./findings.ts";
export { judgementFor } from "./link.ts";
export * from "./sections.ts";
export * from "./unfinished.ts";
