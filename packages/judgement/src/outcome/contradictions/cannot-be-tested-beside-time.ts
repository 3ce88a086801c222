import { isKnown, isKnownFact } from "@good-grounds/core";
import { rcdsOf } from "../rcds-of.ts";
import type { ContradictionRow } from "./row.ts";

/** An RCD that cannot be tested, and a time of its test. */
export const CANNOT_BE_TESTED_BESIDE_TIME: ContradictionRow = {
  id: "cannot-be-tested-beside-time",
  find: ({ installation }) =>
    rcdsOf(installation).flatMap(({ path, testability, timeAtRated }) =>
      isKnownFact(testability) && testability.word === "cannot-be-tested" && isKnown(timeAtRated)
        ? [{ places: [path] }]
        : [],
    ),
};
