export * from "./figures.ts";
export * from "./findings.ts";
export { judgementFor } from "./link.ts";
