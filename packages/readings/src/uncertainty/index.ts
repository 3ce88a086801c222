export * from "./compared.ts";
export * from "./conformity.ts";
export * from "./instruments.ts";
export * from "./normal.ts";
export * from "./range-of-term.ts";
export * from "./sum-of-errors.ts";
