export { dutiesOf } from "./duties-of.ts";
