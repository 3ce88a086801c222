import { isKnownFact, WEARS } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import type { RecordedProperty } from "../property.ts";

/** What wears on it, the worst of all that was written: the list of the vocabulary runs from nothing to the worst. */
export const enclosureWear: RecordedProperty = Object.freeze({
  id: "enclosure-wear",
  name: "what wears on it",
  values: WEARS,
  read: (spoken: Parameters<RecordedProperty["read"]>[0]) =>
    ofThings(spoken, "enclosures", ({ wear }) => wear).flatMap(([of, leaves]) => {
      const known = leaves.filter(isKnownFact);
      const worst = known.reduce((rank, { word }) => Math.max(rank, WEARS.indexOf(word)), -1);
      const leaf = known.find(({ word }) => WEARS.indexOf(word) === worst) ?? leaves[0];
      return leaf === undefined ? [] : [{ of, leaf, values: WEARS.filter((_, rank) => rank === worst) }];
    }),
});
