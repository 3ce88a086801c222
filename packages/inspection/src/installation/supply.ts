import { type Path, TERM } from "@good-grounds/core";
import { SUPPLY_NEUTRAL, TAILS } from "../fields/conductor.ts";
import { leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import { SUPPLY_READINGS } from "../fields/supply-readings.ts";
import type { DraftFile } from "../schema/draft.ts";
import { bondingConductor, earthingConductor } from "./conductor.ts";
import { overcurrentDevice } from "./device.ts";
import type { Supply } from "./model.ts";
import { phases } from "./phases.ts";

const PATH: Path = Object.freeze(["supply"]);

export function resolveSupply(leaves: Leaves, entry: NonNullable<DraftFile["supply"]>): Supply {
  const at = (...steps: (string | number)[]): Path => [...PATH, ...steps];
  return Object.freeze({
    ...leavesOf(SUPPLY_READINGS, leaves, entry.readings, at("readings")),
    path: PATH,
    earthing: leaves.fact(MATTER.earthingSystem, entry.earthing, at("earthing")),
    phases: phases(leaves, entry.phases, at("phases")),
    public: leaves.fact(MATTER.publicSupply, entry.public, at("public")),
    nominalVoltage: leaves.quantity(TERM.nominalVoltage, entry.nominalVoltage, at("nominalVoltage")),
    device: overcurrentDevice(leaves, entry.device, at("device")),
    tails: Object.freeze(leavesOf(TAILS, leaves, entry.tails, at("tails"))),
    neutral: Object.freeze(leavesOf(SUPPLY_NEUTRAL, leaves, entry.neutral, at("neutral"))),
    earthingConductor: earthingConductor(leaves, entry.earthingConductor, at("earthingConductor")),
    bonding: Object.freeze((entry.bonding ?? []).map((bond, i) => bondingConductor(leaves, bond, at("bonding", i)))),
    mainSwitchRated: leaves.quantity(TERM.ratedSwitch, entry.mainSwitch?.rated, at("mainSwitch", "rated")),
    otherSources: Object.freeze(
      (entry.otherSources ?? []).map(({ kind, notice }, i) =>
        Object.freeze({
          path: at("otherSources", i),
          kind,
          notice: leaves.fact(MATTER.otherSourceNotice, notice, at("otherSources", i, "notice")),
        }),
      ),
    ),
    statedDemand: leaves.quantity(TERM.maximumDemand, entry.maximumDemand?.value, at("maximumDemand", "value")),
  });
}
