import { type Insulation, type NotKnown, type Published, published, type Source, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { readOff } from "./read-off.ts";

const SEEN = source("BS 7671 Table 4B1", "2008 to 2018+A4", "published");
const REFERENCE = source("BS 7671 Table 4B1", "2008 to 2018+A4", "derived", {
  formula: "1 at 30 °C, for which the capacities are tabulated",
});
const RULE = source("BS 7671 Table 4B1", "2008 to 2018+A4", "derived", {
  formula: "√((θp − θa) ÷ (θp − 30)), rounded",
});
const RECALLED = source("BS 7671 Table 4B1", "2008 to 2018+A4", "memory", {
  doubt: "lower than the square-root rule gives, so on the safe side",
});

type Step = readonly [celsius: number, factor: number, source: Source];

/** Rating factor for ambient air by conductor operating temperature. */
export const AMBIENT: Readonly<Record<"70" | "90", readonly Step[]>> = Object.freeze({
  "70": [
    [25, 1.03, RECALLED],
    [30, 1.0, REFERENCE],
    [35, 0.94, RULE],
    [40, 0.87, SEEN],
    [45, 0.79, SEEN],
    [50, 0.71, SEEN],
    [55, 0.61, SEEN],
    [60, 0.5, RULE],
  ],
  "90": [
    [25, 1.02, RECALLED],
    [30, 1.0, REFERENCE],
    [35, 0.96, RULE],
    [40, 0.91, RULE],
    [45, 0.87, RULE],
    [50, 0.82, RULE],
    [55, 0.76, RULE],
    [60, 0.71, RULE],
    [65, 0.65, RULE],
    [70, 0.58, RULE],
    [75, 0.5, RULE],
    [80, 0.41, RULE],
  ],
});

const GROUND_RULE = source("BS 7671 Table 4B2", "2008 to 2018+A4", "derived", {
  formula: "√((θp − θg) ÷ (θp − 20)), rounded",
});

/** Temperatures of the ground that Table 4B2 has rows for, °C. */
const GROUND_STEPS = [10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60];

/** Rating factor for the temperature of the ground by conductor operating temperature. */
export const GROUND: Readonly<Record<"70" | "90", readonly Step[]>> = Object.freeze({
  "70": groundSteps(70),
  "90": groundSteps(90),
});

function groundSteps(operating: number): readonly Step[] {
  return GROUND_STEPS.map((celsius) => [
    celsius,
    Math.round(Math.sqrt((operating - celsius) / (operating - 20)) * 100) / 100,
    GROUND_RULE,
  ]);
}

const stepsOf = (table: typeof AMBIENT, where: string, operating: "70" | "90") =>
  table[operating].map(([celsius, factor, from]) => {
    const row = `${operating} °C conductor, ${celsius} °C ${where}`;
    return {
      at: celsius,
      exact: published(TERM.ambientFactor, factor, from, row),
      between: published(TERM.ambientFactor, factor, readOff(from, "the next warmer step"), row),
    };
  });
const STEPS = { "70": stepsOf(AMBIENT, "ambient", "70"), "90": stepsOf(AMBIENT, "ambient", "90") };
const IN_GROUND = { "70": stepsOf(GROUND, "ground", "70"), "90": stepsOf(GROUND, "ground", "90") };

const OPERATING: Readonly<Partial<Record<Insulation, "70" | "90">>> = {
  "70C-thermoplastic": "70",
  "90C-thermoplastic": "90",
  "90C-thermosetting": "90",
};

/**
 * Rating factor Ca for an ambient temperature in °C. Between the steps of the table the warmer step is taken, below
 * 25 °C the step of 25 °C: both on the safe side, and marked as derived. Above the last step there is none.
 */
export function ambientFactor(insulation: Insulation, celsius: number): Published<"ratio"> | NotKnown<"ratio"> {
  const operating = OPERATING[insulation];
  if (operating !== undefined) {
    for (const step of STEPS[operating]) {
      if (celsius === step.at) return step.exact;
      if (celsius < step.at) return step.between;
    }
  }
  return notTabulated(TERM.ambientFactor, "Table 4B1", `${insulation} at ${celsius} °C`);
}

/**
 * Rating factor for the temperature of the ground in °C round a buried cable, which the tables hold at 20 °C. Between the
 * steps the warmer one is taken, below 10 °C that of 10 °C.
 */
export function groundFactor(insulation: Insulation, celsius: number): Published<"ratio"> | NotKnown<"ratio"> {
  const operating = OPERATING[insulation];
  const step = operating === undefined ? undefined : IN_GROUND[operating].find(({ at }) => celsius <= at);
  if (step === undefined) return notTabulated(TERM.ambientFactor, "Table 4B2", `${insulation} at ${celsius} °C`);
  return celsius === step.at ? step.exact : step.between;
}
