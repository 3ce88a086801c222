import { expect, test } from "vitest";
import { changed, inputOf } from "../../../../outside/reports/example.ts";
import { legibleWidth } from "./legible.ts";
import { reportModel } from "./model.ts";

/** Points of the text column: A4 without the margins of 18 mm at both sides. */
const COLUMN = ((210 - 36) / 25.4) * 72;
/** Of two drawings side by side with 4 mm between. */
const HALF = (COLUMN - (4 / 25.4) * 72) / 2;

test("a drawing is as wide as its smallest letters need for seven points", () => {
  const svg = '<svg viewBox="0 0 200 90"><text font-size="10">a</text><text font-size="8">b</text></svg>';
  expect(legibleWidth(svg)).toBe(175);
});

test("drawings of curves fit side by side, and those beside an observation leave room for their words", () => {
  const text = changed(({ observations }) => {
    Object.assign(observations[0] as object, {
      topic: "board-blank-missing",
      facts: {
        "who-comes": "anyone",
        shape: "rectangular",
        width: "17.5 mm",
        height: "45 mm",
        offset: "0 mm",
        depth: "25 mm",
      },
      positions: {},
    });
  });
  const input = inputOf(text);
  const curve = { circuit: ["boards", 0, "circuits", 0], device: "32 A type B", conductor: "cpc", points: [] } as const;
  const { data } = reportModel({
    ...input,
    curves: [{ ...curve, withstand: 1, faultCurrent: [1, 2], permittedTime: 5 }],
  });
  const { curves, observations } = data as {
    curves: { list: { width: number }[] };
    observations: { list: { reasoning: { drawn: { width: number; alt: string }[] } }[] };
  };
  expect(curves.list[0]?.width).toBeGreaterThan(0);
  expect(curves.list[0]?.width).toBeLessThanOrEqual(HALF);
  const drawn = observations.list.flatMap(({ reasoning }) => reasoning.drawn);
  expect(drawn.length).toBe(3);
  for (const { width } of drawn) expect(width).toBeLessThan(COLUMN - 100);
  expect(drawn.filter(({ alt }) => alt.includes("opening 17.5 mm; live part 25 mm deep"))).toHaveLength(1);
});
