export { assemble } from "./assemble.ts";
export { draftWhereOpen } from "./draft.ts";
export { misfitsOf } from "./misfits.ts";
