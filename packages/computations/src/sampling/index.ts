export * from "./hypergeometric.ts";
export * from "./reach.ts";
