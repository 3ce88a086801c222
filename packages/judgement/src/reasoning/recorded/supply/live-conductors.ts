import { isKnownFact } from "@good-grounds/core";
import type { SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty } from "../property.ts";
import { phasesOf } from "./phases.ts";

/** How many live conductors there are: two of one phase; of three phases three, or four where the neutral is used. */
export const liveConductors: RecordedProperty = Object.freeze({
  id: "live-conductors",
  name: "live conductors, by the number of phases",
  values: ["2", "3", "4"],
  read: (spoken: SpokenOf) =>
    phasesOf(spoken).map(([of, leaf]) => ({
      of,
      leaf,
      values: isKnownFact(leaf) ? (leaf.word === "1" ? ["2"] : ["3", "4"]) : [],
    })),
});
