export * from "./continuity.ts";
export * from "./insulation.ts";
export * from "./order.ts";
export * from "./polarity.ts";
