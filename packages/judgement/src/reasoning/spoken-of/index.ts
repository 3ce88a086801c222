export * from "./findings.ts";
export * from "./spoken-of.ts";
