export * from "./compared.ts";
export * from "./conformity.ts";
export * from "./sum-of-errors.ts";
