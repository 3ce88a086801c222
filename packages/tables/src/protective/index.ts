export * from "./adiabatic-k.ts";
export * from "./sizes.ts";
