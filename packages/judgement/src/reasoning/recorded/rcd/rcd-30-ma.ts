import { rcdWorks, residualsBefore } from "@good-grounds/computations";
import { type Fact, fact, factNotKnown, isKnown, isKnownFact, matter, Reckoner } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import type { SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty } from "../property.ts";

const PROTECTED = matter("rcd-30-ma", "a working RCD of 30 mA or less");
const RECKON = new Reckoner(false);
/** The greatest rated residual operating current of additional protection, in A (415.1.1). */
const MOST = 0.03;

/**
 * Whether the circuit spoken of is behind an RCD of 30 mA or less that its test showed to work, whether or not one is
 * asked for there: no where it has none, or none of those on the way to the origin is sensitive enough and passed.
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
  const { present, devices } = residualsBefore(circuit);
  if (isKnownFact(present) && !present.word) return fact(PROTECTED, false, path, "no RCD");
  const judged = devices.map(({ residual, test }) => {
    if (isKnown(residual) && residual.low > MOST * (1 + 1e-9)) return "not-met";
    const { verdict } = rcdWorks(test, RECKON);
    return isKnown(residual) || verdict === "not-met" ? verdict : "not-known";
  });
  if (judged.includes("met")) return fact(PROTECTED, true, path, "tested in time", "measured");
  if (judged.length > 0 && judged.every((verdict) => verdict === "not-met"))
    return fact(PROTECTED, false, path, "none is sensitive enough and passed its test", "measured");
  return factNotKnown(PROTECTED, path);
}
