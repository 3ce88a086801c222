import type { Basis, Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Subjects the regulations are listed by. */
export const REGULATION_GROUPS = [
  "disconnection",
  "residual-current",
  "overcurrent",
  "fire-surge-arc",
  "earthing-bonding-isolation",
  "cables",
  "basic-protection",
  "notices",
  "testing",
  "periodic-inspection",
] as const;
export type RegulationGroup = (typeof REGULATION_GROUPS)[number];

/** A regulation by number and what it is about. */
export interface Regulation {
  /** Its number as it is cited: "411.3.3", "Appendix 6". */
  readonly id: string;
  readonly group: RegulationGroup;
  /**
   * What it asks, in our own words and shortened, so that a reader recognises it. No substitute for the text, and
   * nothing in it applies to older installations by itself.
   */
  readonly gist: string;
  readonly source: Source;
}

/** A regulation as a group's file lists it. */
export type Listed = readonly [
  id: string,
  basis: Basis,
  gist: string,
  more?: { readonly edition?: string; readonly doubt?: string },
];

const CURRENT = "2018+A2+A3 and 2018+A4";

/** The regulations of one group, each with its own source, since some were seen and some are remembered. */
export function regulationsOf(group: RegulationGroup, listed: readonly Listed[]): readonly Regulation[] {
  return Object.freeze(
    listed.map(([id, basis, gist, { edition = CURRENT, doubt } = {}]) =>
      Object.freeze({
        id,
        group,
        gist,
        source: source(`BS 7671 ${id}`, edition, basis, doubt === undefined ? {} : { doubt }),
      }),
    ),
  );
}
