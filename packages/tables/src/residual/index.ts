export * from "./operating-time.ts";
export * from "./permitted-ra.ts";
export * from "./standing-leakage.ts";
export * from "./test-current.ts";
export * from "./touch-voltage.ts";
