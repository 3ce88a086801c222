import { type Published, published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const TABLE = source("BS 7671 Table 64", "2018 and later (Table 61 before)", "published");

/** Voltage classes of Table 64. */
export const INSULATION_CLASSES = ["SELV/PELV", "up to 500 V", "above 500 V"] as const;
export type InsulationClass = (typeof INSULATION_CLASSES)[number];

const ROWS: Readonly<Record<InsulationClass, { readonly testVoltage: number; readonly least: Published<"ohm"> }>> =
  Object.freeze({
    "SELV/PELV": {
      testVoltage: 250,
      least: published(TERM.permittedInsulation, 0.5e6, TABLE, "SELV and PELV, 250 V d.c."),
    },
    "up to 500 V": {
      testVoltage: 500,
      least: published(TERM.permittedInsulation, 1e6, TABLE, "up to and including 500 V, 500 V d.c."),
    },
    "above 500 V": {
      testVoltage: 1000,
      least: published(TERM.permittedInsulation, 1e6, TABLE, "above 500 V, 1000 V d.c."),
    },
  });

/** Least insulation resistance of a circuit, Ω. */
export function permittedInsulation(circuit: InsulationClass): Published<"ohm"> {
  return ROWS[circuit].least;
}

/** Test voltage d.c. for a circuit, V. */
export function insulationTestVoltage(circuit: InsulationClass): number {
  return ROWS[circuit].testVoltage;
}

/** The test with equipment connected that the usual voltage could harm, or that would spoil the reading (643.3.3). */
export const REDUCED_INSULATION_TEST = Object.freeze({
  /** Test voltage d.c., V. */
  testVoltage: 250,
  /** Live conductors together, against earth. */
  between: "live-to-earth",
  least: published(
    TERM.permittedInsulation,
    1e6,
    source("BS 7671 643.3.3", "2018 and later", "memory", {
      doubt: "the test at 250 V was read; that the least value stays 1 MΩ is remembered",
    }),
    "equipment connected, 250 V d.c.",
  ),
  source: source("BS 7671 643.3.3", "2018 and later", "published"),
} as const);

/** Output current at which the instrument has to hold the test voltage, A. */
export const insulationTestCurrent = published(
  TERM.current,
  0.001,
  source("BS EN 61557-2; BS 7671 643.3.2", "2018 and later", "published"),
  "nominal test voltage held at 1 mA",
);

/** Reading below which the cause is looked for although the limit is met, Ω. No limit. */
export const insulationWorthAsking = published(
  TERM.resistance,
  2e6,
  source("habit of the trade", "none", "common-practice"),
  "below 2 MΩ: find out why",
);
