export * from "./input.ts";
