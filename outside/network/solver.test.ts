import { EigenvalueDecomposition, inverse, Matrix } from "ml-matrix";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { type Resistor, SolvedNetwork } from "../../packages/readings/src/networks/index.ts";
import { needTool } from "../tools.ts";
import { simulatedResistances } from "./ngspice.ts";

interface Drawn {
  readonly nodes: number;
  readonly resistors: readonly Resistor[];
}

/** Connected networks of the sizes an installation has: milliohms of cable up to hundreds of ohms of earth. */
function randomNetworks(count: number, seed: number): readonly Drawn[] {
  const chance = new Chance(seed);
  return Array.from({ length: count }, () => {
    const nodes = 3 + Math.floor(chance.uniform() * 30);
    const ohms = () => 10 ** chance.between(-3, 2.3);
    const any = (below: number) => Math.floor(chance.uniform() * below);
    const tree = Array.from({ length: nodes - 1 }, (_, i) => ({ from: i + 1, to: any(i + 1), ohms: ohms() }));
    const chords = Array.from({ length: any(nodes * 2) }, () => ({ from: any(nodes), to: any(nodes), ohms: ohms() }));
    return { nodes, resistors: [...tree, ...chords.filter(({ from, to }) => from !== to)] };
  });
}

const relative = (found: number, expected: number) => Math.abs(found / expected - 1);

describe("the network solver against others, to 1e-9 relative", () => {
  const networks = randomNetworks(150, 60228);

  test.skipIf(!needTool("ngspice"))("a circuit simulator", () => {
    const simulated = simulatedResistances(
      networks.map(({ nodes, resistors }) => ({
        network: resistors.map(({ from, to, ohms }) => ({ from: `n${from}`, to: `n${to}`, ohms })),
        between: ["n0", `n${nodes - 1}`] as const,
      })),
    );
    for (const [i, { nodes, resistors }] of networks.entries()) {
      const found = new SolvedNetwork(nodes, resistors).between(0, nodes - 1);
      expect(relative(found, simulated[i] as number)).toBeLessThan(1e-9);
    }
  });

  test("a matrix library: every pair of nodes, and voltages", () => {
    for (const { nodes, resistors } of networks) {
      const laplacian = Matrix.zeros(nodes, nodes);
      for (const { from, to, ohms } of resistors) {
        laplacian.set(from, from, laplacian.get(from, from) + 1 / ohms);
        laplacian.set(to, to, laplacian.get(to, to) + 1 / ohms);
        laplacian.set(from, to, laplacian.get(from, to) - 1 / ohms);
        laplacian.set(to, from, laplacian.get(to, from) - 1 / ohms);
      }
      // With the last node as reference, unlike the solver under test, which takes the first.
      const reduced = laplacian.subMatrix(0, nodes - 2, 0, nodes - 2);
      const known = inverse(reduced);
      const solved = new SolvedNetwork(nodes, resistors);
      for (let a = 0; a < nodes - 1; a++) {
        expect(relative(solved.between(a, nodes - 1), known.get(a, a))).toBeLessThan(1e-9);
        const b = (a * 7 + 1) % (nodes - 1);
        const voltage = solved.voltage(b, nodes - 1, a, nodes - 1);
        expect(Math.abs(voltage - known.get(b, a))).toBeLessThan(1e-9 * Math.max(known.get(a, a), known.get(b, b)));
      }
    }
  });

  test("the reduced matrix of a connected network is positive definite", () => {
    for (const { nodes, resistors } of networks.slice(0, 20)) {
      const kernel = Matrix.zeros(nodes - 1, nodes - 1);
      const solved = new SolvedNetwork(nodes, resistors);
      for (let i = 1; i < nodes; i++)
        for (let j = 1; j < nodes; j++) kernel.set(i - 1, j - 1, solved.voltage(i, 0, j, 0));
      const { realEigenvalues } = new EigenvalueDecomposition(kernel, { assumeSymmetric: true });
      expect(Math.min(...realEigenvalues)).toBeGreaterThan(0);
    }
  });
});
