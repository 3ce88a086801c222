import { assemble } from "@good-grounds/assembly";
import type { Misfit } from "@good-grounds/core";
import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { diagnoseInstallation, lookAtOwnFigures } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { careOf, soundJob } from "../alarms/job.ts";
import { fileOf, installationOf, soundHouse, type WrittenCircuit, type WrittenHouse } from "./written-house.ts";

// What may be behind the readings of a circuit, one thing at a time, in a house whose every figure was reckoned by hand.

function house(changes: Readonly<Record<number, Partial<WrittenCircuit>>>): WrittenHouse {
  const made = soundHouse();
  for (const [circuit, change] of Object.entries(changes))
    Object.assign(made.circuits[Number(circuit) - 1] ?? {}, change);
  return made;
}

const ofCircuit = (misfits: readonly Misfit[], circuit: number) =>
  misfits.filter(({ path, clear }) => clear && path.join("/") === `boards/0/circuits/${circuit - 1}`);

/** The explanations of a circuit that stand in the lead and cannot be told apart. */
function leading(written: WrittenHouse, circuit: number): readonly string[] {
  const [misfit] = ofCircuit(diagnoseInstallation(installationOf(written)), circuit);
  return misfit?.explanations.slice(0, misfit.tied ?? 1).map(({ id }) => id) ?? [];
}

describe("the explanations of a circuit", () => {
  test("aluminium written down as copper: both conductors 1.64 times as much", () => {
    // 28 m of 2.5/1.5: (7.41 + 12.1) mΩ/m × 28 m × 0.97 × 1.64 = 0.87 Ω; before it 0.22 Ω.
    expect(leading(house({ 8: { r1r2: "0.87", zs: "1.10" } }), 8)).toContain("material-wrong");
  });

  test("lengths that are plainly guesses: one of them half as long again is no aluminium", () => {
    const guessed = (circuit: { cable: Record<string, unknown> }, i: number) => {
      delete circuit.cable.lengthFound;
      const times = [1, 1.2, 0.85, 1.25, 0.8, 1.18, 0.85, 0.66][i] ?? 1;
      circuit.cable.length = `${Math.round(Number.parseFloat(String(circuit.cable.length)) * times)} m`;
    };
    const file = structuredClone(fileOf(soundHouse()));
    file.boards[0]?.circuits.forEach((circuit, i) => {
      guessed(circuit as unknown as { cable: Record<string, unknown> }, i);
    });
    const [misfit] = ofCircuit(diagnoseInstallation(resolveInstallation(file), new Set(["boards/0/circuits/7"])), 8);
    expect(misfit?.explanations[0]?.id).toBe("length-wrong");
  });

  test("two rows exchanged: each fits the other's cable", () => {
    const exchanged = house({ 3: { r1r2: "0.55", zs: "0.78" }, 8: { r1r2: "0.92", zs: "1.12" } });
    for (const circuit of [3, 8]) expect(leading(exchanged, circuit)[0]).toBe("rows-exchanged");
  });

  test("two rows exchanged, the length of one not written down", () => {
    const file = structuredClone(fileOf(house({ 3: { r1r2: "0.09", zs: "0.31" }, 5: { r1r2: "0.92", zs: "1.12" } })));
    const cable: Record<string, unknown> = file.boards[0]?.circuits[2]?.cable ?? {};
    delete cable.length;
    const [misfit] = ofCircuit(diagnoseInstallation(resolveInstallation(file)), 5);
    expect(misfit?.explanations[0]?.id).toBe("rows-exchanged");
  });

  test("a row copied whole, by the diagnosis and among one's own figures", () => {
    const copied = house({ 8: { r1r2: "0.92", zs: "1.12" } });
    expect(leading(copied, 8)[0]).toBe("row-copied");
    const [first] = lookAtOwnFigures(installationOf(copied)).toConfirm;
    expect(first?.check).toBe("copied-row");
    expect(first?.words).toContain("circuit 8 (garage sockets): all readings (0.92 Ω, 1.12 Ω)");
  });

  test("line and neutral of the size below", () => {
    // 14 m of 10/4, in truth 6 mm²: (3.08 + 4.61) mΩ/m × 14 m × 0.97 = 0.10 Ω, which nothing can tell; a longer one can.
    // 60 m of 4/1.5, in truth 2.5 mm²: R1 = 7.41 mΩ/m × 60 m × 0.97 = 0.43 Ω, R2 = 12.1 mΩ/m × 60 m × 0.97 = 0.70 Ω.
    const file = fileOf(house({ 8: { cable: "4/1.5", length: "60", r1r2: "1.14", zs: "1.36" } }));
    const circuit = file.boards[0]?.circuits[7];
    if (circuit === undefined) throw new Error("no circuit 8");
    const readings = circuit.readings as Record<string, unknown>;
    readings.r2Only = { shown: "0.70 Ω", with: "meter" };
    const [misfit] = ofCircuit(diagnoseInstallation(resolveInstallation(file)), 8);
    const ids = misfit?.explanations.slice(0, misfit.tied ?? 1).map(({ id }) => id);
    expect(ids).toContain("line-conductor-size-wrong");
  });

  test("R1+R2 and R2 in each other's column", () => {
    const file = fileOf(house({ 8: { r1r2: "0.34" } }));
    const readings = file.boards[0]?.circuits[7]?.readings as Record<string, unknown>;
    readings.r2Only = { shown: "0.55 Ω", with: "meter" };
    const [misfit] = ofCircuit(diagnoseInstallation(resolveInstallation(file)), 8);
    expect(misfit?.explanations[0]?.id).toBe("columns-exchanged");
    expect(misfit?.explanations[0]?.words).toBe("R1+R2 and R2 stand in each other's column");
  });

  test("no protective conductor: nothing reads through, dead or live", () => {
    expect(leading(house({ 8: { r1r2: ">99.9", zs: ">1999" } }), 8)).toEqual(["protective-conductor-absent"]);
    // Where the live test finds an earth, another one carries it, or the far end was not linked.
    expect(leading(house({ 8: { r1r2: ">99.9" } }), 8)).toEqual([
      "protective-conductor-absent",
      "no-link-at-the-far-end",
    ]);
  });

  test("a ring that is closed and reads nothing at its furthest point: line and neutral are reversed there", () => {
    const ring = house({ 1: { lineNeutral: undefined, lineCpc: undefined, r1r2: ">99.9", zs: "0.45" } });
    expect(leading(ring, 1)[0]).toBe("line-neutral-swapped-at-the-point");
    // Zs is not held against an R1+R2 that is none.
    const disagreeing = new Set(["boards/0/circuits/0"]);
    expect(ofCircuit(diagnoseInstallation(installationOf(ring), disagreeing), 1)).toHaveLength(1);
  });

  test("readings that nothing fits are told as such", () => {
    const [first] = leading(house({ 8: { r1r2: "9.17", zs: "4.43" } }), 8);
    expect(first).toBe("none-of-these");
  });

  test("a loose connection that was seen makes a joint the likelier", () => {
    const file = fileOf(house({ 8: { r1r2: "0.87", zs: "1.10" } }));
    const share = (observations: readonly object[]) => {
      const with_ = { ...file, observations } as unknown as Parameters<typeof resolveInstallation>[0];
      const [misfit] = ofCircuit(diagnoseInstallation(resolveInstallation(with_)), 8);
      const joints = misfit?.explanations.filter(({ id }) => id.startsWith("joint-in-")) ?? [];
      return joints.reduce((sum, one) => sum + one.share, 0);
    };
    const circuit = file.boards[0]?.circuits[7]?.id;
    const seen = {
      id: "o1",
      topic: "accessory-connection-loose",
      circuit,
      facts: { connection: "loose" },
      what: "loose",
    };
    expect(share([])).toBeLessThan(0.2);
    expect(share([seen])).toBeGreaterThan(0.5);
  });

  test("what a check of agreement finds not met is a clear misfit of the circuit or of its board", () => {
    let held = 0;
    for (let i = 0; i < 10; i++) {
      const parsed = parseInspectionData(soundJob(`one judgement/${i}`, careOf(4)).file);
      if (!parsed.ok) throw new Error("the simulated file is refused");
      const { weighing, misfits = [] } = assemble(parsed.file);
      const clear = new Set(misfits.filter((one) => one.clear).map(({ path }) => path.join("/")));
      for (const { check, path, judgement } of weighing.circuits.flat()) {
        if (!["zs-agreement", "r1r2-length", "ring-continuity"].includes(check) || judgement.verdict !== "not-met")
          continue;
        // What is common to a board is told of once, for the board.
        expect(clear.has(path.join("/")) || clear.has(path.slice(0, 2).join("/")), path.join("/")).toBe(true);
        held += 1;
      }
    }
    expect(held).toBeGreaterThan(0);
  });
});
