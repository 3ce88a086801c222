export { assemble } from "./assemble.ts";
export { misfitsOf } from "./misfits.ts";
