import {
  type NotKnown,
  type Published,
  published,
  type RcdDelay,
  type RcdStandard,
  type Source,
  TERM,
} from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const ARTICLE = "trade article, 17th edition";
const EN = source(
  "BS EN 61008-1 and BS EN 61009-1; BS 7671 643.7.1, 643.8",
  "standards current; BS 7671 2018+A2 and later",
  "published",
);
const BS4293 = source(`BS 4293 (withdrawn); ${ARTICLE}`, "1983 to 1998", "published");
const BS7288 = source(`BS 7288; ${ARTICLE}`, "1990 and later", "published");

/** Multiples of IΔn at which times are tabulated. Since amendment 2 only the first is asked for. */
export type RcdMultiple = 1 | 2 | 5;

interface Row {
  readonly standards: readonly RcdStandard[];
  readonly delay: RcdDelay;
  readonly multiple: RcdMultiple;
  /** Longest time, s. */
  readonly most: number;
  /** Shortest time a delayed device may take, s. */
  readonly least: number | null;
  readonly source: Source;
}

const HARMONISED = ["BS EN 61008", "BS EN 61009", "BS EN 62423"] as const;

const ROWS: readonly Row[] = Object.freeze([
  { standards: HARMONISED, delay: "general", multiple: 1, most: 0.3, least: null, source: EN },
  { standards: HARMONISED, delay: "general", multiple: 2, most: 0.15, least: null, source: EN },
  { standards: HARMONISED, delay: "general", multiple: 5, most: 0.04, least: null, source: EN },
  { standards: HARMONISED, delay: "S", multiple: 1, most: 0.5, least: 0.13, source: EN },
  { standards: HARMONISED, delay: "S", multiple: 2, most: 0.2, least: null, source: EN },
  { standards: HARMONISED, delay: "S", multiple: 5, most: 0.15, least: 0.05, source: EN },
  { standards: ["BS 4293"], delay: "general", multiple: 1, most: 0.2, least: null, source: BS4293 },
  { standards: ["BS 4293"], delay: "general", multiple: 5, most: 0.04, least: null, source: BS4293 },
  { standards: ["BS 7288"], delay: "general", multiple: 1, most: 0.2, least: null, source: BS7288 },
  { standards: ["BS 7288"], delay: "general", multiple: 5, most: 0.04, least: null, source: BS7288 },
] as const);

/** Limits of an RCD's operating time. */
export interface RcdLimits {
  readonly max: Published<"second"> | NotKnown<"second">;
  /** Null where the table sets no least time. */
  readonly min: Published<"second"> | null;
}

const NODES = byKey<string, RcdLimits>(
  ROWS.flatMap(({ standards, delay, multiple, most, least, source: from }) =>
    standards.map((standard) => {
      const row = `${standard} ${delay}, ${multiple} × IΔn`;
      const min = least === null ? null : published(TERM.leastRcdTime, least, from, row);
      return [
        `${standard} ${delay} ${multiple}`,
        Object.freeze({ max: published(TERM.permittedRcdTime, most, from, row), min }),
      ] as const;
    }),
  ),
);

/**
 * Permitted operating times by product standard, delay and multiple of IΔn, for an alternating test current. A delayed
 * BS 4293 device needs the delay marked on it: see {@link delayedRcdTime}.
 */
export function permittedRcdTime(rcd: {
  readonly standard: RcdStandard;
  readonly delay: RcdDelay;
  readonly multiple: RcdMultiple;
}): RcdLimits {
  const found = NODES.get(`${rcd.standard} ${rcd.delay} ${rcd.multiple}`);
  if (found !== undefined) return found;
  const asked = `${rcd.standard}, ${rcd.delay}, ${rcd.multiple} × IΔn; the delay set on the device is needed`;
  return { max: notTabulated(TERM.permittedRcdTime, "the RCD standards", asked), min: null };
}

const DELAYED = source(`BS 4293 (withdrawn); ${ARTICLE}`, "1983 to 1998", "derived", {
  formula: "from t + half the marked delay to t + the whole; t = 200 ms at IΔn, 40 ms at 5 IΔn",
});

/** Limits of a delayed BS 4293 device by the delay marked on it, s. */
export function delayedRcdTime(markedDelay: number, multiple: 1 | 5): RcdLimits {
  const row = `BS 4293, delay ${markedDelay} s, ${multiple} × IΔn`;
  if (!(markedDelay > 0 && Number.isFinite(markedDelay)))
    return { max: notTabulated(TERM.permittedRcdTime, "BS 4293", row), min: null };
  const undelayed = multiple === 1 ? 0.2 : 0.04;
  return {
    max: published(TERM.permittedRcdTime, undelayed + markedDelay, DELAYED, row),
    min: published(TERM.leastRcdTime, undelayed + markedDelay / 2, DELAYED, row),
  };
}

/** Part of IΔn at which an RCD must not operate. */
export const nonOperatingMultiple = published(TERM.ratio, 0.5, EN, "½ IΔn, must not operate");
