export * from "./compiled.ts";
export * from "./former-facts.ts";
export { TOPICS } from "./own.ts";
export * from "./topic.ts";
export * from "./topics.ts";
