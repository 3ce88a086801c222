import { type Published, published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const PUBLIC = source("BS 7671 Appendix 4 Table 4Ab", "2008 to 2018+A4, informative", "published");
const PRIVATE = source("BS 7671 Appendix 4 Table 4Ab", "2008 to 2018+A4, informative", "memory");

const ROWS = Object.freeze({
  "public lighting": published(TERM.dropFraction, 0.03, PUBLIC, "public supply, lighting"),
  "public other": published(TERM.dropFraction, 0.05, PUBLIC, "public supply, other uses"),
  "private lighting": published(TERM.dropFraction, 0.06, PRIVATE, "private supply, lighting"),
  "private other": published(TERM.dropFraction, 0.08, PRIVATE, "private supply, other uses"),
});

/** Permitted voltage drop from origin to load as a part of the nominal voltage. */
export function permittedDrop(circuit: {
  readonly supply: "public" | "private";
  readonly use: "lighting" | "other";
}): Published<"ratio"> {
  return ROWS[`${circuit.supply} ${circuit.use}`];
}
