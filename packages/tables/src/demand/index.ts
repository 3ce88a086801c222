export * from "./diversity.ts";
