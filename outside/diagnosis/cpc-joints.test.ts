import { describe, expect, test } from "vitest";
import { saidOf } from "./cpc-joints.ts";

const ACCURACY = "±(2 % + 2 digits)";
const SIZES = { line: 2.5, cpc: 1.5 };
const RINGS = 12;
const SEED = 606;
/** Milliseconds a test may take on a slow and busy machine. */
const PATIENCE = 300_000;

describe("a loose joint in the protective conductor of a ring, by a meter of other errors than the diagnosis'", () => {
  test(
    "of 0.30 to 0.36 Ω in 60 m, as much as another size would have: the ring is never called sound",
    () => {
      const said = saidOf({ metres: [60, 60], sizes: SIZES, joint: [0.3, 0.36], accuracy: ACCURACY }, RINGS, SEED);
      expect(said).toMatchObject({ sound: 0, silent: 0, alarm: RINGS });
      expect(said.named).toBe(RINGS);
      expect(said.joint).toBeGreaterThan(RINGS / 2);
    },
    PATIENCE,
  );

  test(
    "the larger it is, the less often the ring is called sound",
    () => {
      const shares = [
        [0.05, 0.1],
        [0.1, 0.2],
        [0.2, 0.4],
        [0.4, 0.6],
        [0.6, 1],
      ] as const;
      const sound = shares.map(
        (joint) => saidOf({ metres: [20, 100], sizes: SIZES, joint, accuracy: ACCURACY }, RINGS, SEED).sound,
      );
      expect(sound).toEqual([...sound].sort((a, b) => b - a));
      expect(sound.slice(2)).toEqual([0, 0, 0]);
    },
    PATIENCE,
  );

  test(
    "without a word on the meter's accuracy it is no sound ring either",
    () => {
      const said = saidOf({ metres: [60, 60], sizes: SIZES, joint: [0.3, 0.36], accuracy: undefined }, RINGS, SEED);
      expect(said.sound).toBe(0);
    },
    PATIENCE,
  );

  test(
    "a protective conductor of 1 mm² written down as 1.5 mm² is named, with a joint beside it where readings do not tell",
    () => {
      const asked = { metres: [55, 65], sizes: { line: 2.5, cpc: 1 }, written: SIZES, joint: undefined } as const;
      const said = saidOf({ ...asked, accuracy: ACCURACY }, RINGS, SEED);
      expect(said.sound).toBe(0);
      expect(said.size).toBeGreaterThan(0.9 * RINGS);
      // In the others the points tell the two apart.
      expect(said.named).toBeGreaterThanOrEqual(RINGS / 3);
    },
    PATIENCE,
  );

  test(
    "sound rings of the sizes written down raise no alarm",
    () => {
      const said = saidOf({ metres: [20, 100], sizes: SIZES, joint: undefined, accuracy: ACCURACY }, 3 * RINGS, SEED);
      expect(said).toMatchObject({ silent: 3 * RINGS, alarm: 0 });
    },
    PATIENCE,
  );
});
