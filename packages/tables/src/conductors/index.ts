export * from "./armour.ts";
export * from "./flat-twin-cpc.ts";
export * from "./imperial.ts";
export * from "./resistance.ts";
export * from "./temperature.ts";
