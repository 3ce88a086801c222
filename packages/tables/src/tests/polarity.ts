import { source } from "../sources.ts";

/** What a polarity test has to show. */
export const POLARITY_RULES = ["single-pole-devices", "centre-contact-lampholders", "accessories"] as const;
export type PolarityRule = (typeof POLARITY_RULES)[number];

const POLARITY = source("BS 7671 643.6", "2018 to 2018+A4", "memory");

interface PolarityRow {
  readonly asks: string;
  readonly except: string | null;
  readonly source: typeof POLARITY;
}

const ROWS: Readonly<Record<PolarityRule, PolarityRow>> = Object.freeze({
  "single-pole-devices": {
    asks: "fuses, switches and other single-pole devices stand in the line conductor only",
    except: null,
    source: POLARITY,
  },
  "centre-contact-lampholders": {
    asks: "the centre contact of an Edison screw lampholder is on the line",
    except: "E14 and E27 lampholders to BS EN 60238",
    source: POLARITY,
  },
  accessories: { asks: "wiring is connected to the right terminals of accessories", except: null, source: POLARITY },
});

/** A rule of 643.6 in plain words, with what it leaves out. */
export function polarityRule(rule: PolarityRule): PolarityRow {
  return ROWS[rule];
}
