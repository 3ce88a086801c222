export * from "./armour.ts";
export * from "./imperial.ts";
export * from "./resistance.ts";
export * from "./temperature.ts";
