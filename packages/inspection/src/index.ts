export * from "./installation/index.ts";
export * from "./issues.ts";
export * from "./items/index.ts";
export * from "./json-schema.ts";
export { MIGRATIONS, type Migration } from "./migrations/index.ts";
export * from "./parse.ts";
export * from "./print.ts";
export { FORMAT, type InspectionFile, inspectionFile, VERSION } from "./schema/file.ts";
export { INSTRUMENT_RANGES } from "./schema/instrument.ts";
