import { BOND_MATTER, CONNECTION_STATES, ELECTRODE_KINDS, SEASONS, TERM } from "@good-grounds/core";
import { readingField, wordField, yesNoField } from "../make.ts";

/** An earth electrode. */
export const ELECTRODE = Object.freeze({
  kind: wordField(BOND_MATTER.electrodeKind, ELECTRODE_KINDS, { label: "Kind" }),
  resistance: readingField(TERM.measuredRa, "electrode", { label: "Resistance", help: "of this electrode alone" }),
  season: wordField(BOND_MATTER.season, SEASONS, { label: "Ground during the test" }),
  accessible: yesNoField(BOND_MATTER.electrodeAccessible, { label: "Connection can be got at" }),
  state: wordField(BOND_MATTER.electrodeState, CONNECTION_STATES, { label: "State of the connection" }),
});
