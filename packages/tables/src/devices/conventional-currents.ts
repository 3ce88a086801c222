import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { BREAKER_RATINGS, breakerType } from "./breaker-types.ts";
import { deviceWords, type MarkedDevice } from "./device.ts";
import { fuseRows } from "./fuses/index.ts";

/** The conventional currents of a device: what it carries, and what operates it, within the conventional time. */
export interface ConventionalCurrents {
  /** Does not operate it within the time, A. */
  readonly nonOperating: Published<"ampere"> | NotKnown<"ampere">;
  /** Operates it within the time, I2, A. */
  readonly operating: Published<"ampere"> | NotKnown<"ampere">;
  /** The conventional time, s; null where it is not known. */
  readonly seconds: number | null;
}

const EN = source("BS EN 60898-1 and BS EN 61009-1", "current", "memory", {
  formula: "1.13 × In and 1.45 × In; 1 h up to 63 A, 2 h above",
});
const GG = source("BS EN 60269-1, gG from 16 A", "current", "memory", {
  formula: "1.25 × In and 1.6 × In; 1 h up to 63 A, 2 h up to 160 A, 3 h up to 400 A",
});
const SEMI_ENCLOSED = source("BS 7671 433.1.202, by the factor 0.725", "2008 to 2018+A4", "published", {
  formula: "2 × In, since 1.45 ÷ 0.725 = 2",
});

const HOUR = 3600;

interface Rule {
  readonly nonOperating: number | null;
  readonly operating: number;
  readonly seconds: number | null;
  readonly source: typeof EN;
}

function ruleOf(device: MarkedDevice): Rule | undefined {
  const { standard, type, rated } = device;
  if (standard === "BS EN 60898" || standard === "BS EN 61009") {
    const stands = breakerType(standard, type) !== undefined;
    if (!stands || !(rated >= BREAKER_RATINGS.least && rated <= BREAKER_RATINGS.greatest)) return undefined;
    return { nonOperating: 1.13, operating: 1.45, seconds: rated > 63 ? 2 * HOUR : HOUR, source: EN };
  }
  if (fuseRows(device).length === 0) return undefined;
  if (standard === "BS 3036" && rated > 0)
    return { nonOperating: null, operating: 2, seconds: null, source: SEMI_ENCLOSED };
  if (standard === "BS 88-2" || standard === "BS 88-2.2" || standard === "BS 88-6") {
    if (!(rated >= 16 && rated <= 400)) return undefined;
    const hours = rated <= 63 ? 1 : rated <= 160 ? 2 : 3;
    return { nonOperating: 1.25, operating: 1.6, seconds: hours * HOUR, source: GG };
  }
  return undefined;
}

/**
 * Conventional currents in A: of breakers to BS EN 60898 and 61009, of gG fuses from 16 A to 400 A, and the fusing
 * current of semi-enclosed fuses. Other devices have none here.
 */
export function conventionalCurrents(device: MarkedDevice): ConventionalCurrents {
  const words = deviceWords(device);
  const rule = ruleOf(device);
  const none = (what: string) => notTabulated(TERM.current, "the conventional currents", `${words}, ${what}`);
  if (rule === undefined) {
    const operating = notTabulated(TERM.operatingCurrent, "the conventional currents", words);
    return { nonOperating: none("not operating"), operating, seconds: null };
  }
  const within = rule.seconds === null ? "" : ` within ${rule.seconds / HOUR} h`;
  return {
    nonOperating:
      rule.nonOperating === null
        ? none("not operating")
        : published(TERM.current, rule.nonOperating * device.rated, rule.source, `${words}: not operating${within}`),
    operating: published(
      TERM.operatingCurrent,
      rule.operating * device.rated,
      rule.source,
      `${words}: operating${within}`,
    ),
    seconds: rule.seconds,
  };
}
