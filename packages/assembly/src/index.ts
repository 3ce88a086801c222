export { assemble, misfitsOf } from "./assemble.ts";
