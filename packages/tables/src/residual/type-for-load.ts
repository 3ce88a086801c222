import type { RcdType, Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Loads by what their residual current may look like in a fault. */
export const RESIDUAL_LOADS = [
  "resistive-fixed",
  "socket-outlets",
  "electronic-single-phase",
  "frequency-controlled-single-phase",
  "frequency-controlled-three-phase",
  "vehicle-charging-with-dc-detection",
  "vehicle-charging-without-dc-detection",
  "inverter-with-separation",
  "inverter-without-separation",
] as const;
export type ResidualLoad = (typeof RESIDUAL_LOADS)[number];

/** The RCD types that respond to the residual current a load can cause. */
export interface TypeForLoad {
  readonly load: ResidualLoad;
  readonly why: string;
  readonly types: readonly RcdType[];
  readonly regulation: string;
  readonly source: Source;
}

const GENERAL = source("BS 7671 531.3.3", "2018 and later; type AC narrowed by A2", "published", {
  doubt: "the rule was read; which types follow for a kind of load is remembered",
});
const of = (regulation: string) =>
  source(`BS 7671 ${regulation}`, "2018 and later", "memory", { doubt: "number and wording remembered" });
const VEHICLE = of("722.531.3.101");
const INVERTER = of("712.531.3.5");

const row = (
  load: ResidualLoad,
  why: string,
  types: readonly RcdType[],
  regulation: string,
  from: Source,
): TypeForLoad => Object.freeze({ load, why, types: Object.freeze(types), regulation, source: from });

/** RCD types by load. The maker of the equipment may state another type, which then counts. */
export const TYPES_FOR_LOADS: readonly TypeForLoad[] = Object.freeze([
  row("resistive-fixed", "sinusoidal alternating", ["AC", "A", "F", "B"], "531.3.3", GENERAL),
  row("socket-outlets", "anything may be plugged in: pulsating direct", ["A", "F", "B"], "531.3.3", GENERAL),
  row("electronic-single-phase", "pulsating direct, up to 6 mA smooth", ["A", "F", "B"], "531.3.3", GENERAL),
  row("frequency-controlled-single-phase", "mixed frequencies, up to 10 mA smooth", ["F", "B"], "531.3.3", GENERAL),
  row("frequency-controlled-three-phase", "smooth direct", ["B"], "531.3.3", GENERAL),
  row(
    "vehicle-charging-with-dc-detection",
    "smooth direct is switched off at 6 mA",
    ["A", "F", "B"],
    "722.531.3.101",
    VEHICLE,
  ),
  row("vehicle-charging-without-dc-detection", "smooth direct", ["B"], "722.531.3.101", VEHICLE),
  row("inverter-with-separation", "no direct current passes the separation", ["A", "F", "B"], "712.531.3.5", INVERTER),
  row("inverter-without-separation", "smooth direct", ["B"], "712.531.3.5", INVERTER),
]);

/** The types for a load. */
export function typesForLoad(load: ResidualLoad): TypeForLoad {
  const found = TYPES_FOR_LOADS.find((one) => one.load === load);
  if (found === undefined) throw new RangeError(`no row for ${load}`);
  return found;
}
