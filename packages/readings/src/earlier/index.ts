export { type DatedInstallation, isDated } from "./dated.ts";
export { type ThenAndNowOptions, thenAndNow } from "./then-and-now.ts";
