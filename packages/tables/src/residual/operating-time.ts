import { type NotKnown, type Published, published, type RcdDelay, type RcdStandard, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const EN = source("BS EN 61008-1 and BS EN 61009-1; BS 7671 643.7.1, 643.8", "2018+A2 and later", "published");
const BS4293 = source(
  "BS 4293 (withdrawn); contractor-body technical article, 17th edition",
  "1983 to 1998",
  "published",
);
const BS7288 = source("BS 7288; contractor-body technical article, 17th edition", "1990 and later", "published");

/** Times in s at IΔn and at 5 IΔn; `least` is the shortest a delayed device may take. */
const ROWS: readonly {
  standards: readonly RcdStandard[];
  delay: RcdDelay;
  multiple: 1 | 5;
  most: number;
  least: number | null;
  source: typeof EN;
}[] = [
  {
    standards: ["BS EN 61008", "BS EN 61009", "BS EN 62423"],
    delay: "general",
    multiple: 1,
    most: 0.3,
    least: null,
    source: EN,
  },
  {
    standards: ["BS EN 61008", "BS EN 61009", "BS EN 62423"],
    delay: "general",
    multiple: 5,
    most: 0.04,
    least: null,
    source: EN,
  },
  {
    standards: ["BS EN 61008", "BS EN 61009", "BS EN 62423"],
    delay: "S",
    multiple: 1,
    most: 0.5,
    least: 0.13,
    source: EN,
  },
  {
    standards: ["BS EN 61008", "BS EN 61009", "BS EN 62423"],
    delay: "S",
    multiple: 5,
    most: 0.15,
    least: 0.05,
    source: EN,
  },
  { standards: ["BS 4293"], delay: "general", multiple: 1, most: 0.2, least: null, source: BS4293 },
  { standards: ["BS 4293"], delay: "general", multiple: 5, most: 0.04, least: null, source: BS4293 },
  { standards: ["BS 7288"], delay: "general", multiple: 1, most: 0.2, least: null, source: BS7288 },
  { standards: ["BS 7288"], delay: "general", multiple: 5, most: 0.04, least: null, source: BS7288 },
];

/** Limits of an RCD's operating time. */
export interface RcdLimits {
  readonly max: Published<"second"> | NotKnown<"second">;
  /** Null where the standard sets no least time. */
  readonly min: Published<"second"> | null;
}

const NODES: ReadonlyMap<string, RcdLimits> = new Map(
  ROWS.flatMap(({ standards, delay, multiple, most, least, source: from }) =>
    standards.map((standard) => {
      const row = `${standard} ${delay}, ${multiple} × IΔn`;
      const min = least === null ? null : published(TERM.leastRcdTime, least, from, row);
      return [
        `${standard} ${delay} ${multiple}`,
        { max: published(TERM.permittedRcdTime, most, from, row), min },
      ] as const;
    }),
  ),
);

/** Permitted operating times by product standard, delay and multiple of IΔn, for an alternating test current. */
export function permittedRcdTime(rcd: {
  readonly standard: RcdStandard;
  readonly delay: RcdDelay;
  readonly multiple: 1 | 5;
}): RcdLimits {
  const found = NODES.get(`${rcd.standard} ${rcd.delay} ${rcd.multiple}`);
  if (found !== undefined) return found;
  const asked = `${rcd.standard}, ${rcd.delay}, ${rcd.multiple} × IΔn; the delay set on the device is needed`;
  return { max: notTabulated(TERM.permittedRcdTime, "the RCD standards", asked), min: null };
}
