import { BOND_MATTER, CONNECTION_STATES, SERVICE_PRESENCES, TERM } from "@good-grounds/core";
import { readingField, wordField, yesNoField } from "./make.ts";
import { MATTER } from "./matters.ts";

/** What main bonding goes to, and whether it has to. */
export const BONDED_PART = Object.freeze({
  service: wordField(BOND_MATTER.service, SERVICE_PRESENCES, {
    label: "The service or part",
    help: "whether there is one at all",
  }),
  extraneous: yesNoField(MATTER.extraneous, { label: "Extraneous", help: "a plastic service is not" }),
  partResistance: readingField(TERM.partToTerminal, "insulation", {
    label: "Part to earthing terminal",
    help: "disconnected from everything else; shows whether it is extraneous",
  }),
});

/** The bond itself. */
export const BOND = Object.freeze({
  connected: yesNoField(MATTER.connected, { label: "Connected" }),
  condition: wordField(
    BOND_MATTER.state,
    CONNECTION_STATES,
    { label: "Condition", help: "of the conductor and its clamps" },
    { browned: "browned or stiff from heat" },
  ),
});

export const BOND_READINGS = Object.freeze({
  resistance: readingField(TERM.bondResistance, "continuity", {
    label: "Resistance",
    meaning: "resistance of the bonding conductor",
  }),
});
