import { LENGTH_FOUND } from "@good-grounds/core";
import { wordField } from "./make.ts";
import { MATTER } from "./matters.ts";

/**
 * How a length came about. One that does not say is taken as estimated, which is what most lengths of reports are, unless
 * the other circuits of the job do not bear their lengths out.
 */
export const LENGTH_FOUND_FIELD = wordField(
  MATTER.lengthFound,
  LENGTH_FOUND,
  { label: "Length is", help: "how it was found", meaning: "how the length was found" },
  { unknown: "of unknown origin" },
);
