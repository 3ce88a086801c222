export * from "./ambient.ts";
export * from "./capacity.ts";
export type { CapacityRow } from "./capacity-row.ts";
export * from "./grouping.ts";
export * from "./layers.ts";
export * from "./permitted-drop.ts";
export * from "./semi-enclosed.ts";
export * from "./thermal-insulation.ts";
