export * from "./operating-time.ts";
export * from "./touch-voltage.ts";
