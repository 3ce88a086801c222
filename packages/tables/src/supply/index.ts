export * from "./loop.ts";
export * from "./voltage.ts";
