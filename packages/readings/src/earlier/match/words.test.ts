import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { excludeEachOther, Vocabulary, wordsOf } from "./words.ts";

const words = (text: string) => [...wordsOf(text)].sort();

describe("words of a circuit chart", () => {
  test.each([
    ["sockets, ground floor", "Ring main downstairs"],
    ["sockets, ground floor", "GF skts"],
    ["Socket-outlets first floor", "power 1st floor"],
    ["lights, first floor", "Upstairs lighting"],
    ["lighting loft", "Lightng attic"],
    ["cooker", "Oven"],
    ["EV charger", "car charging"],
  ])("%s says the same as %s", (one, other) => {
    expect(words(one)).toEqual(words(other));
  });

  test.each([
    ["sockets, ground floor", "sockets, first floor"],
    ["lights", "sockets"],
    ["shower", "cooker"],
  ])("%s does not say the same as %s", (one, other) => {
    expect(words(one)).not.toEqual(words(other));
  });

  test("upstairs and downstairs exclude each other, a word more does not", () => {
    expect(excludeEachOther(wordsOf("lights upstairs"), wordsOf("lights gf"))).toBe(true);
    expect(excludeEachOther(wordsOf("lights upstairs"), wordsOf("lights"))).toBe(false);
    expect(excludeEachOther(wordsOf("lights upstairs and loft"), wordsOf("lights loft"))).toBe(false);
  });

  test("any text is read, and likeness lies between nothing and one, the same both ways", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), fc.string(), (one, other) => {
        const [a, b] = [wordsOf(one), wordsOf(other)];
        const vocabulary = new Vocabulary([a, b]);
        const likeness = vocabulary.likeness(a, b);
        expect(vocabulary.likeness(b, a)).toBe(likeness);
        if (likeness === undefined) return;
        expect(likeness).toBeGreaterThanOrEqual(0);
        expect(likeness).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("a rare word tells more than a common one", () => {
    const all = ["sockets kitchen", "sockets hall", "sockets lounge", "sockets porch"].map(wordsOf);
    const vocabulary = new Vocabulary([...all, wordsOf("kitchen ring")]);
    const [kitchen, hall] = all as [ReadonlySet<string>, ReadonlySet<string>];
    expect(vocabulary.likeness(kitchen, hall)).toBeLessThan(0.5);
  });
});
