import { COMPUTATIONS, givenFromText } from "@good-grounds/computations";
import { assumed, isKnown, Reckoner, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type Probe, type Resistor, simulatedResistances } from "./ngspice.ts";

const reckon = new Reckoner(true);

/** A small generator with a fixed start, so that a failure can be repeated. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/**
 * A ring of two conductors of `legs` pieces each. At the board the start of one is joined to the end of the other:
 * that is how a ring is cross-connected for the second and third step of its test.
 */
function crossConnectedRing(first: readonly number[], second: readonly number[]): Resistor[] {
  const network: Resistor[] = [];
  const legs = first.length;
  for (let i = 0; i < legs; i++) {
    network.push({ from: `a${i}`, to: `a${i + 1}`, ohms: first[i] as number });
    network.push({ from: `b${i}`, to: `b${i + 1}`, ohms: second[i] as number });
  }
  const join = 1e-9;
  network.push({ from: "a0", to: `b${legs}`, ohms: join }, { from: `a${legs}`, to: "b0", ohms: join });
  return network;
}

function computed(r1: number, r2: number, position: number, spur?: number): number {
  const one = COMPUTATIONS.get("ring-reading");
  if (one === undefined || !("compute" in one)) throw new Error("ring-reading is gone");
  const quantity = (term: Parameters<typeof assumed>[0], value: number) => assumed(term, value, "random network");
  const made = givenFromText(one.needs, {});
  if (!made.ok) throw new Error("refused");
  const given = {
    ...made.given,
    r1: quantity(TERM.ringLine, r1),
    r2: quantity(TERM.ringCpc, r2),
    position: quantity(TERM.ringPosition, position),
    ...(spur === undefined ? {} : { spur: quantity(TERM.spurResistance, spur) }),
  };
  const [result] = one.compute(given, reckon).results;
  if (result === undefined || !isKnown(result)) throw new Error("no result");
  return result.value;
}

describe("the law of a cross-connected ring", () => {
  test.skipIf(!needTool("ngspice"))("agrees with a circuit simulator on random rings, positions and spurs", () => {
    const random = generator(20260501);
    const rings = Array.from({ length: 60 }, () => {
      const perMetre = [0.00741, 0.0121, 0.00461, 0.0181];
      const ra = perMetre[Math.floor(random() * 4)] as number;
      const rb = perMetre[Math.floor(random() * 4)] as number;
      const legs = 3 + Math.floor(random() * 12);
      const lengths = Array.from({ length: legs }, () => 1 + random() * 15);
      const at = 1 + Math.floor(random() * (legs - 1));
      const spurLength = random() < 0.4 ? 1 + random() * 9 : 0;
      return { ra, rb, lengths, at, spurLength };
    });
    const probes = rings.map(({ ra, rb, lengths, at, spurLength }): Probe => {
      const network = crossConnectedRing(
        lengths.map((l) => l * ra),
        lengths.map((l) => l * rb),
      );
      if (spurLength === 0) return { network, between: [`a${at}`, `b${at}`] };
      network.push(
        { from: `a${at}`, to: "sa", ohms: spurLength * ra },
        { from: `b${at}`, to: "sb", ohms: spurLength * rb },
      );
      return { network, between: ["sa", "sb"] };
    });
    const simulated = simulatedResistances(probes);
    for (const [i, { ra, rb, lengths, at, spurLength }] of rings.entries()) {
      const whole = lengths.reduce((a, b) => a + b, 0);
      const before = lengths.slice(0, at).reduce((a, b) => a + b, 0);
      const spur = spurLength === 0 ? undefined : spurLength * (ra + rb);
      const expected = computed(whole * ra, whole * rb, before / whole, spur);
      expect(Math.abs(expected / (simulated[i] as number) - 1)).toBeLessThan(1e-6);
    }
  });
});
