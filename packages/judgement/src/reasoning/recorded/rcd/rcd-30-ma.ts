import { residualsBefore } from "@good-grounds/computations";
import { type Fact, fact, factNotKnown, isKnownFact, matter } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import type { SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty } from "../property.ts";
import { ADDITIONAL, behindRcd } from "./behind-rcd.ts";

const PROTECTED = matter("rcd-30-ma", "a working RCD of 30 mA or less");

/**
 * Whether the circuit spoken of is behind an RCD of 30 mA or less, without delay, that its test showed to work, whether or
 * not one is asked for there: no where it has none, or none of those on the way to the origin does for it.
 */
export const rcd30mA: RecordedProperty = Object.freeze({
  id: "rcd-30-ma",
  name: PROTECTED.name,
  values: ["yes", "no"],
  read: ({ circuit }: SpokenOf) => {
    if (circuit === undefined) return [];
    const leaf = leafOf(circuit);
    return [{ of: circuit.path, leaf, values: isKnownFact(leaf) ? [leaf.word ? "yes" : "no"] : [] }];
  },
});

function leafOf(circuit: Circuit): Fact<boolean> {
  const path = [...circuit.path, "rcd"];
  const behind = behindRcd(circuit, ADDITIONAL);
  if (behind === "open") return factNotKnown(PROTECTED, path);
  if (behind === "yes") return fact(PROTECTED, true, path, "tested in time", "measured");
  const { present } = residualsBefore(circuit);
  if (isKnownFact(present) && !present.word) return fact(PROTECTED, false, path, "no RCD");
  return fact(PROTECTED, false, path, "none is sensitive enough and passed its test", "measured");
}
