export * from "./check.ts";
export * from "./checks/index.ts";
export * from "./given.ts";
export * from "./need.ts";
export * from "./weigh.ts";
