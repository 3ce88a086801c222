export { MATTER } from "../fields/matters.ts";
export { resolveDraft, resolveInstallation } from "./build.ts";
export type * from "./model.ts";
export { type SpokenOf, spokenOf } from "./spoken-of.ts";
export type { Thing, Things, Whereabouts } from "./things.ts";
export type { WholeInstallation } from "./whole.ts";
