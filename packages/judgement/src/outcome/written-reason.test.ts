import { describe, expect, test } from "vitest";
import { isReasonOfItsOwn, isWrittenReason } from "./written-reason.ts";

describe("a reason says something", () => {
  test.each([
    undefined,
    "",
    ".",
    "–",
    "...",
    "n/a",
    "N.A.",
    "none",
    "tbc",
    "see above",
    "See above.",
    "as above",
    "See note 4",
    "see observation 3 below",
    "Refer to the report.",
    "ditto",
    "same as previous",
    "ok",
    "no reason",
    "xxxxxxx",
    "1234",
    "as noted on page 3",
    "not applicable",
  ])("%j is none", (text) => {
    expect([isWrittenReason(text), isReasonOfItsOwn(text)]).toEqual([false, false]);
  });

  test.each(["boxed in", "no time for it", "sealed", "See above: sealed", "Verschlossen", "looks fine now"])(
    "%j is one, and not yet one by itself",
    (text) => {
      expect([isWrittenReason(text), isReasonOfItsOwn(text)]).toEqual([true, false]);
    },
  );

  test.each([
    "The room is locked.",
    "See above: the meter is sealed",
    "Covered before leaving, and nobody comes there.",
    "The room is locked and the key is with the landlord.",
    "Used by instructed staff for two fixed machines; a risk assessment exists.",
  ])("%j stands by itself", (text) => {
    expect(isReasonOfItsOwn(text)).toBe(true);
  });
});
