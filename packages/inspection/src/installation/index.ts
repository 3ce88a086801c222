export { MATTER } from "../fields/matters.ts";
export { resolveInstallation } from "./build.ts";
export type * from "./model.ts";
export type { WholeInstallation } from "./whole.ts";
export type { Thing, Things, Whereabouts } from "./things.ts";
