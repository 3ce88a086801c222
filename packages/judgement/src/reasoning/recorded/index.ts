export * from "./answers.ts";
export * from "./properties.ts";
export type { RecordedProperty } from "./property.ts";
