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
