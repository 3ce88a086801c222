import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { diagnoseRingReadings, type RingAsked } from "../../packages/readings/src/diagnosis/ring/index.ts";
import { predict } from "../../packages/readings/src/diagnosis/ring/prediction.ts";
import type { Hypothesis } from "../../packages/readings/src/diagnosis/ring/ring-state.ts";
import { scoreOf } from "./measure-rings.ts";
import { PLANTED_KINDS, plantedRing } from "./planted-rings.ts";
import { inputOf, type TrueRing, trueReadings } from "./simulated-ring.ts";

const RINGS = 25;

describe("faults planted in simulated rings (ring-results.md has the full count)", () => {
  test.each(PLANTED_KINDS.filter(({ alike }) => alike === undefined))(
    "$name: found in 95 of 100, first in 85",
    (kind) => {
      const { found, first, rings } = scoreOf(kind, RINGS, 60364);
      expect(found / rings).toBeGreaterThanOrEqual(0.95);
      expect(first / rings).toBeGreaterThanOrEqual(0.85);
    },
  );

  test("a hundred sound rings raise no alarm", () => {
    const [sound] = PLANTED_KINDS;
    if (sound?.name !== "sound") throw new Error("no sound rings");
    expect(scoreOf(sound, 100, 61557).first).toBeGreaterThanOrEqual(99);
  });
});

/** The planted fault as a hypothesis with its true parameters. */
function asHypothesis({ planted, points, metres, perMetre }: TrueRing): [Hypothesis, Float64Array] {
  const [line, neutral, cpc] = perMetre;
  const common = [Math.log(line * metres), Math.log(neutral / line), Math.log(cpc / line), 0, 0];
  const places = points.map((at) => at / metres);
  const made = (
    ring: Hypothesis["ring"],
    own: readonly number[],
    at: Hypothesis["points"] = [],
  ): [Hypothesis, Float64Array] => [{ ring, points: at }, Float64Array.from([...common, ...own, ...places])];
  switch (planted.kind) {
    case "joint":
      return made(planted, [planted.ohms]);
    case "leads-not-nulled":
      return made(planted, [planted.ohms]);
    case "interconnection":
      return made({ kind: "interconnection" }, [
        places[planted.from] ?? 0,
        places[planted.to] ?? 0,
        planted.metres / metres,
      ]);
    case "spur":
      return made({ kind: "sound" }, [planted.metres / metres], [planted]);
    case "terminal":
      return made({ kind: "sound" }, [planted.ohms], [planted]);
    case "swapped":
      return made({ kind: "sound" }, [], [planted]);
    default:
      return made(planted, []);
  }
}

describe("the diagnosis' network against one with a node at every point", () => {
  test.each(PLANTED_KINDS)("$name: every reading to 1e-9", (kind) => {
    const chance = new Chance(11);
    for (let i = 0; i < 20; i++) {
      const ring = plantedRing(kind, chance);
      const truth = trueReadings(ring);
      const [hypothesis, values] = asHypothesis(ring);
      const at = (pair: RingAsked["pair"]) =>
        ring.points.map((_, point): RingAsked => ({ arrangement: "cross-connected", pair, point }));
      const asked: RingAsked[] = [
        ...(["line", "neutral", "cpc"] as const).map(
          (conductor): RingAsked => ({ arrangement: "ends-apart", pair: "line-neutral", conductor, point: -1 }),
        ),
        ...at("line-neutral"),
        ...at("line-cpc"),
      ];
      const found = new Float64Array(asked.length);
      predict(hypothesis, values, asked, found);
      const expected = [...truth.ends, ...truth.lineNeutral, ...truth.lineCpc];
      for (const [k, ohms] of expected.entries()) {
        if (ohms === Number.POSITIVE_INFINITY) expect(found[k]).toBe(ohms);
        else expect(Math.abs((found[k] as number) / ohms - 1)).toBeLessThan(1e-9);
      }
    }
  });
});

test("the stated next reading, taken, settles what could not be told apart", () => {
  // The reading of the leading two explanations differ by more than the meter's error: taking it rules one of them out.
  const chance = new Chance(5);
  for (const kind of PLANTED_KINDS.filter(
    ({ name }) => name.startsWith("swapped") || name.startsWith("crossed") || name === "two rings crossed",
  )) {
    const { leading, next } = diagnoseRingReadings(inputOf(plantedRing(kind, chance), chance));
    expect(leading).toBeGreaterThan(1);
    expect(next?.separates).toBe("explanations");
    expect(next?.separation).toBeGreaterThan(4);
  }
});
