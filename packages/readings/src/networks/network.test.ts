import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MOST_NODES, type Resistor, SolvedNetwork } from "./index.ts";

const ohms = fc.double({ min: 0.001, max: 100, noNaN: true });
/** A network in which every node hangs on an earlier one, with chords. */
const network = fc.array(fc.tuple(fc.nat(), ohms), { minLength: 1, maxLength: 12 }).chain((tree) =>
  fc.array(fc.tuple(fc.nat(tree.length), fc.nat(tree.length), ohms), { maxLength: 8 }).map((chords) => ({
    nodes: tree.length + 1,
    resistors: [
      ...tree.map(([back, size], i): Resistor => ({ from: i + 1, to: back % (i + 1), ohms: size })),
      ...chords.map(([from, to, size]): Resistor => ({ from, to, ohms: size })),
    ],
  })),
);

/** Equal to 1e-9 of the value, or to the last digits of the largest resistances a network here can have. */
function near(found: number, expected: number): void {
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-9 * Math.abs(expected) + 1e-10);
}

describe("a resistance network", () => {
  test("series add, parallels by their reciprocals, a bridge in balance carries nothing", () => {
    expect(
      new SolvedNetwork(3, [
        { from: 0, to: 1, ohms: 2 },
        { from: 1, to: 2, ohms: 3 },
      ]).between(0, 2),
    ).toBeCloseTo(5, 12);
    expect(
      new SolvedNetwork(2, [
        { from: 0, to: 1, ohms: 2 },
        { from: 1, to: 0, ohms: 3 },
      ]).between(0, 1),
    ).toBeCloseTo(1.2, 12);
    const bridge = (across: number) =>
      new SolvedNetwork(4, [
        { from: 0, to: 1, ohms: 1 },
        { from: 0, to: 2, ohms: 2 },
        { from: 1, to: 3, ohms: 3 },
        { from: 2, to: 3, ohms: 6 },
        { from: 1, to: 2, ohms: across },
      ]);
    expect(bridge(0.01).between(0, 3)).toBeCloseTo(bridge(1000).between(0, 3), 12);
    expect(bridge(1).voltage(1, 2, 0, 3)).toBeCloseTo(0, 12);
  });

  test("zero-ohm links join nodes; parts apart are infinitely far, and drive no current", () => {
    const solved = new SolvedNetwork(5, [
      { from: 0, to: 1, ohms: 0 },
      { from: 1, to: 2, ohms: 4 },
      { from: 2, to: 0, ohms: 4 },
      { from: 2, to: 3, ohms: Number.POSITIVE_INFINITY },
      { from: 3, to: 4, ohms: 7 },
    ]);
    expect(solved.between(0, 1)).toBe(0);
    expect(solved.between(0, 2)).toBeCloseTo(2, 12);
    expect(solved.between(0, 3)).toBe(Number.POSITIVE_INFINITY);
    expect(solved.between(3, 4)).toBeCloseTo(7, 12);
    expect(solved.voltage(0, 2, 3, 4)).toBe(0);
    expect(solved.voltage(0, 2, 0, 4)).toBeNaN();
  });

  test("a point along a resistor is the node that would be there", () => {
    fc.assert(
      fc.property(
        network,
        fc.nat(),
        fc.nat(),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (drawn, k, b, part) => {
          const along = k % drawn.resistors.length;
          const cut = drawn.resistors[along] as Resistor;
          const other = b % drawn.nodes;
          const whole = new SolvedNetwork(drawn.nodes, drawn.resistors);
          const split = new SolvedNetwork(drawn.nodes + 1, [
            ...drawn.resistors.filter((_, i) => i !== along),
            { from: cut.from, to: drawn.nodes, ohms: cut.ohms * part },
            { from: drawn.nodes, to: cut.to, ohms: cut.ohms * (1 - part) },
          ]);
          near(whole.between({ along, part }, other), split.between(drawn.nodes, other));
          near(whole.between({ along, part }, { along, part: 0 }), split.between(drawn.nodes, cut.from));
        },
      ),
    );
  });

  test("milliohms beside megohms lose no digits", () => {
    // Two arms in parallel: 1 µΩ + 1 MΩ, and 1 mΩ.
    const solved = new SolvedNetwork(3, [
      { from: 0, to: 1, ohms: 1e-6 },
      { from: 1, to: 2, ohms: 1e6 },
      { from: 0, to: 2, ohms: 1e-3 },
    ]);
    expect(solved.between(0, 2) / (1 / (1 / (1e6 + 1e-6) + 1e3)) - 1).toBeCloseTo(0, 12);
    expect(solved.between(0, 1) / 1e-6 - 1).toBeCloseTo(0, 9);
  });

  test("resistance is symmetric, a metric, and never falls when a resistor rises", () => {
    fc.assert(
      fc.property(network, fc.nat(), fc.nat(), fc.nat(), fc.nat(), (drawn, x, y, z, k) => {
        const [a, b, c] = [x % drawn.nodes, y % drawn.nodes, z % drawn.nodes];
        const solved = new SolvedNetwork(drawn.nodes, drawn.resistors);
        expect(solved.between(a, b)).toBeCloseTo(solved.between(b, a), 9);
        expect(solved.between(a, b)).toBeLessThanOrEqual(solved.between(a, c) + solved.between(c, b) + 1e-9);
        const risen = drawn.resistors.map((one, i) =>
          i === k % drawn.resistors.length ? { ...one, ohms: one.ohms * 3 } : one,
        );
        expect(new SolvedNetwork(drawn.nodes, risen).between(a, b)).toBeGreaterThanOrEqual(solved.between(a, b) - 1e-9);
        // Reciprocity: source and meter may change places.
        expect(solved.voltage(a, c, b, c)).toBeCloseTo(solved.voltage(b, c, a, c), 9);
      }),
    );
  });

  test.each([
    ["less than nothing", 2, { from: 0, to: 1, ohms: -1 }],
    ["no number", 2, { from: 0, to: 1, ohms: Number.NaN }],
    ["a node too many", 2, { from: 0, to: 2, ohms: 1 }],
    ["half a node", 2, { from: 0, to: 0.5, ohms: 1 }],
    ["too large", MOST_NODES + 1, { from: 0, to: 1, ohms: 1 }],
  ])("refuses what is no network: %s", (_, nodes, resistor) => {
    expect(() => new SolvedNetwork(nodes, [resistor])).toThrow(RangeError);
  });

  test("refuses places that are not there", () => {
    const solved = new SolvedNetwork(2, [{ from: 0, to: 1, ohms: Number.POSITIVE_INFINITY }]);
    expect(() => solved.between(0, 2)).toThrow(RangeError);
    expect(() => solved.between({ along: 1, part: 0 }, 0)).toThrow(RangeError);
    expect(() => solved.between({ along: 0, part: 0.5 }, 0)).toThrow(RangeError);
  });
});
