import { published, TERM } from "@good-grounds/core";
import { objectProtection } from "@good-grounds/tables";

const SECOND = objectProtection(2);

/** The sphere of the first numeral 2, which must not enter fully, m. */
export const SPHERE_DIAMETER = published(
  TERM.probeDiameter,
  (SECOND.diameter ?? Number.NaN) / 1000,
  SECOND.source,
  SECOND.keepsOut,
);
