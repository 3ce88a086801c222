export * from "./insulation.ts";
