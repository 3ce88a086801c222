export { type ThenAndNowOptions, thenAndNow } from "./then-and-now.ts";
