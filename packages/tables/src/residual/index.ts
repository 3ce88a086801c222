export * from "./additional-protection.ts";
export * from "./operating-time.ts";
export * from "./permitted-ra.ts";
export * from "./standing-leakage.ts";
export * from "./test-current.ts";
export * from "./touch-voltage.ts";
export * from "./type-for-load.ts";
export * from "./where-asked.ts";
