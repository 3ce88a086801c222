import { describe, expect, test } from "vitest";
import { simulatedResistances } from "../network/ngspice.ts";
import { needTool } from "../tools.ts";
import { Draws } from "./draws.ts";
import { type Piece, resistanceBetween } from "./network.ts";

const piece = (a: string, b: string, ohms: number): Piece => ({ a, b, ohms });

describe("resistance between two places", () => {
  test("of a row, of two side by side, of a bridge in balance and out of it", () => {
    expect(resistanceBetween([piece("a", "m", 1), piece("m", "b", 2)], "a", "b")).toBeCloseTo(3, 12);
    expect(resistanceBetween([piece("a", "b", 3), piece("a", "b", 6)], "a", "b")).toBeCloseTo(2, 12);
    const bridge = (ohms: number) =>
      resistanceBetween(
        [piece("a", "x", 1), piece("x", "b", ohms), piece("a", "y", 1), piece("y", "b", 1), piece("x", "y", 1)],
        "a",
        "b",
      );
    expect(bridge(1)).toBeCloseTo(1, 12);
    // By hand: with 2 Ω in one arm, mesh currents give 13/11 Ω.
    expect(bridge(2)).toBeCloseTo(13 / 11, 12);
  });

  test("is nothing where places are joined, and infinite where nothing connects them", () => {
    expect(resistanceBetween([piece("a", "m", 0), piece("m", "b", 0)], "a", "b")).toBe(0);
    expect(resistanceBetween([piece("a", "m", 1), piece("n", "b", 1)], "a", "b")).toBe(Number.POSITIVE_INFINITY);
    expect(resistanceBetween([piece("a", "m", 1), piece("m", "n", 0), piece("n", "b", 1)], "a", "b")).toBeCloseTo(
      2,
      12,
    );
  });

  test.skipIf(!needTool("ngspice"))("is what a circuit simulator says, to 1e-9 relative", () => {
    const networks = Array.from({ length: 40 }, (_, i) => drawn(new Draws(`network-${i}`)));
    const simulated = simulatedResistances(
      networks.map((pieces) => ({
        network: pieces.map(({ a, b, ohms }) => ({ from: a, to: b, ohms })),
        between: ["n0", "n1"] as const,
      })),
    );
    networks.forEach((pieces, i) => {
      expect(Math.abs(resistanceBetween(pieces, "n0", "n1") / (simulated[i] as number) - 1)).toBeLessThan(1e-9);
    });
  });
});

/** A connected network with some loops, of milliohms to a hundred ohms. */
function drawn(draws: Draws): readonly Piece[] {
  const places = draws.whole("places", 3, 25);
  const ohms = (name: string) => draws.acrossDecades(name, 0.001, 100);
  const tree = Array.from({ length: places - 1 }, (_, i) =>
    piece(`n${i + 1}`, `n${draws.whole(`up-${i}`, 0, i)}`, ohms(`tree-${i}`)),
  );
  const loops = Array.from({ length: draws.whole("loops", 0, places) }, (_, i) =>
    piece(`n${draws.whole(`a-${i}`, 0, places - 1)}`, `n${draws.whole(`b-${i}`, 0, places - 1)}`, ohms(`loop-${i}`)),
  );
  return [...tree, ...loops.filter(({ a, b }) => a !== b)];
}
