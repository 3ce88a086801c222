export { resolveInstallation } from "./build.ts";
export { MATTER } from "./matters.ts";
export type * from "./model.ts";
