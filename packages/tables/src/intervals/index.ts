export * from "./law.ts";
export * from "./recommended.ts";
