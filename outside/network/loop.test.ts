import { describe, expect, test } from "vitest";
import { compute, distance } from "../compute.ts";
import { needTool } from "../tools.ts";
import { type Probe, type Resistor, simulatedResistances } from "./ngspice.ts";

/** A small generator with a fixed start, so that a failure can be repeated. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    return state / 2 ** 32;
  };
}

interface Loop {
  readonly ze: number;
  readonly feeder: number;
  readonly r1: number;
  readonly r2: number;
  /** Resistance of a metallic path beside the protective conductors, or none. */
  readonly beside: number | null;
}

/** The loop as seen at the far socket: source, line out through a feeder and the circuit, protective conductors back. */
function networkOf({ ze, feeder, r1, r2, beside }: Loop): Probe {
  // Where there is no feeder the two ends are one node: a resistor of next to nothing would only spoil the solution's last digits.
  const board1 = feeder === 0 ? "board0" : "board1";
  const bar1 = feeder === 0 ? "mains" : "bar1";
  const network: Resistor[] = [
    { from: "source", to: "board0", ohms: ze / 2 },
    { from: "source", to: "mains", ohms: ze / 2 },
    { from: board1, to: "line", ohms: r1 },
    { from: bar1, to: "cpc", ohms: r2 },
  ];
  if (feeder !== 0) {
    network.push({ from: "board0", to: board1, ohms: feeder / 2 }, { from: "mains", to: bar1, ohms: feeder / 2 });
  }
  if (beside !== null) network.push({ from: "mains", to: "cpc", ohms: beside });
  return { network, between: ["line", "cpc"] };
}

const shown = (ohms: number) => `${ohms.toFixed(9)} Ω`;

describe.skipIf(!needTool("ngspice"))("earth fault loops against a circuit simulator", () => {
  const random = generator(7671);
  const loops: Loop[] = Array.from({ length: 80 }, (_, i) => ({
    ze: 0.02 + random() * 0.8,
    feeder: random() < 0.5 ? 0 : 0.01 + random() * 0.3,
    r1: 0.02 + random() * 0.8,
    r2: 0.02 + random() * 1.2,
    beside: i % 2 === 0 ? null : 0.05 + random() * 3,
  }));
  const simulated = needTool("ngspice") ? simulatedResistances(loops.map(networkOf)) : [];

  test("without a parallel path Zs is the loop before the circuit and R1+R2, to the last digits", () => {
    for (const [i, { ze, feeder, r1, r2, beside }] of loops.entries()) {
      if (beside !== null) continue;
      const answer = compute("expected-zs", { ze: shown(ze + feeder), r1r2: shown(r1 + r2) });
      expect(distance(answer, "expected-zs", simulated[i] as number)).toBeLessThan(1e-8);
    }
  });

  test("a parallel path only lowers Zs, and by what the parallel resistance says", () => {
    for (const [i, { ze, feeder, r1, r2, beside }] of loops.entries()) {
      if (beside === null) continue;
      const zs = simulated[i] as number;
      const sum = ze + feeder + r1 + r2;
      expect(zs).toBeLessThan(sum);
      const inParallel = compute("combined-insulation", { circuits: [shown(feeder / 2 + r2), shown(beside)] });
      const returning = inParallel.values.get("combined-insulation")?.[0] ?? Number.NaN;
      expect(Math.abs(ze + feeder / 2 + r1 + returning - zs)).toBeLessThan(1e-6);
    }
  });

  test("readings with a parallel path that shows do not agree, and the remark points to it", () => {
    for (const [i, { ze, feeder, r1, r2, beside }] of loops.entries()) {
      if (beside === null) continue;
      const zs = simulated[i] as number;
      // The simulator's figures are exact, and are given as that.
      const exact = (ohms: number) => `${shown(ohms)} ± 0 Ω`;
      const found = compute("zs-agreement", { zs: exact(zs), zdb: exact(ze + feeder), r1r2: exact(r1 + r2) });
      const lower = ze + feeder + r1 + r2 - zs;
      // Between the two tests the conductors may be warmer by a little: so much hides a path.
      if (lower > 0.06 * (r1 + r2)) expect(found.judgement?.verdict).toBe("not-met");
      else if (lower <= 1e-6) expect(found.judgement?.verdict).toBe("met");
    }
  });
});
