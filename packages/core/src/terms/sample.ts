import { term } from "./term.ts";

/** Counts of parts of one kind, and how sure a statement about them is. Counts are plain numbers. */
export const SAMPLE = {
  population: term("population", "parts of the kind present", "N", "ratio"),
  inspected: term("inspected-parts", "parts opened", "n", "ratio"),
  defective: term("defective-parts", "defective parts among those opened", "x", "ratio"),
  accepted: term("accepted-defective", "defective parts that may be left among all", "D", "ratio"),
  assurance: term("assurance", "assurance asked for", "", "ratio"),
  mostDefective: term("most-defective", "most defective parts the sample leaves possible", "Dmax", "ratio"),
  leastDefective: term("least-defective", "fewest defective parts the sample leaves possible", "Dmin", "ratio"),
  chanceOfMissing: term("chance-of-missing", "chance that the sample shows none of them", "P0", "ratio"),
  sampleSize: term("sample-size", "parts to open", "n", "ratio"),
  moreToOpen: term("more-to-open", "further parts to open", "", "ratio"),
};
