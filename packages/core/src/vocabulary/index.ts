export * from "./acceptance.ts";
export * from "./cable.ts";
export * from "./circuit.ts";
export * from "./device.ts";
export * from "./emergency.ts";
export * from "./premises.ts";
export * from "./supply.ts";
export * from "./things/index.ts";
