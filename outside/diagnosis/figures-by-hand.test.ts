import { describe, expect, test } from "vitest";
import { BY_HAND, saidByHand, withDoubt } from "./figures-by-hand.ts";

const CIRCUITS = 200;
const SEED = 20;

describe("figures typed by hand", () => {
  test.each(BY_HAND.filter(({ fault }) => fault === "sound"))(
    "$check of sound circuits: not met and too near in one of a hundred at most",
    (asked) => {
      const plain = saidByHand(asked, CIRCUITS, SEED);
      expect(plain.notMet + plain.tooNear).toBeLessThanOrEqual(0.01 * CIRCUITS);
      expect(saidByHand(asked, CIRCUITS, SEED, withDoubt).notMet).toBeLessThanOrEqual(0.01 * CIRCUITS);
    },
  );

  test.each(BY_HAND.filter(({ fault }) => fault !== "sound"))(
    "$check of circuits with a fault ($fault): hardly one is met, with ± hardly one is not decided",
    (asked) => {
      const plain = saidByHand(asked, CIRCUITS, SEED);
      // A decimal that slipped in a small part of the loop shows in R1+R2 against the length, hardly in a sum.
      const slipped = asked.check === "zs-agreement" && asked.fault === "decimal slipped";
      // A size less adds a quarter to a third to R1+R2: no more than a short length known to a metre explains.
      const explained = asked.check === "r1r2-length" && asked.fault === "size wrong";
      expect(plain.notMet + plain.tooNear).toBeGreaterThanOrEqual((explained ? 0.7 : slipped ? 0.85 : 0.95) * CIRCUITS);
      const sure = saidByHand(asked, CIRCUITS, SEED, withDoubt).notMet;
      expect(sure).toBeGreaterThanOrEqual((explained ? 0.65 : 0.95) * CIRCUITS);
    },
  );
});
