export * from "./agreed.ts";
export * from "./least.ts";
export * from "./settled.ts";
