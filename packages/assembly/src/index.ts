export { assemble, misfitsOf } from "./assemble.ts";
export { draftWhereOpen } from "./draft.ts";
