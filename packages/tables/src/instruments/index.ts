export * from "./decision-rules.ts";
export * from "./lowest-usable-reading.ts";
export * from "./operating-uncertainty.ts";
