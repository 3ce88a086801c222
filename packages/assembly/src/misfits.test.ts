import { parseInspectionData } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../outside/files/arbitrary-file.ts";
import { assemble } from "./index.ts";

/** A board with lights and a ring of equal conductors, 92 m of 2.5 mm²: cross-connected it reads 0.32 Ω everywhere. */
function ring(zs: string) {
  const shown = (ohms: string) => ({ shown: `${ohms} Ω`, with: "meter" });
  const points = ["0.31", "0.32", "0.32", "0.31", "0.32"].map((ohms, i) => ({
    point: `socket ${i + 1}`,
    reading: shown(ohms),
  }));
  const data = {
    ...smallestFile(),
    instruments: [
      {
        id: "meter",
        kind: "installation tester",
        serial: "1",
        accuracy: { continuity: "±(1.5 % + 3 digits)", loop: "±(4 % + 4 digits)" },
      },
    ],
    boards: [
      {
        id: "main",
        name: "main board",
        fedFrom: "supply",
        readings: { zdb: shown("0.25") },
        circuits: [
          {
            id: "ring",
            designation: "1",
            description: "sockets",
            shape: "ring",
            load: "socket-outlets",
            cable: {
              line: "2.5 mm²",
              cpc: "2.5 mm²",
              material: "copper",
              cpcArrangement: "separate",
              length: "92 m",
              lengthFound: "taped",
            },
            readings: {
              temperature: { shown: "13 °C" },
              r1: shown("0.63"),
              rn: shown("0.63"),
              r2: shown("0.63"),
              crossLineNeutral: points,
              crossLineCpc: points,
              r1r2: shown("0.32"),
              zs: shown(zs),
            },
          },
          ...[20, 30, 40].map((metres) => ({
            id: `lights-${metres}`,
            designation: `${metres}`,
            description: "lights",
            shape: "radial",
            load: "lighting",
            cable: {
              line: "1.5 mm²",
              cpc: "1 mm²",
              material: "copper",
              cpcArrangement: "in-cable",
              length: `${metres} m`,
              lengthFound: "taped",
            },
            readings: {
              temperature: { shown: "13 °C" },
              r1r2: shown((0.0285 * metres).toFixed(2)),
              zs: shown((0.25 + 0.0285 * metres).toFixed(2)),
            },
          })),
        ],
      },
    ],
  };
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const { weighing, misfits = [] } = assemble(parsed.file);
  const verdict = weighing.circuits[0]?.find(({ check }) => check === "zs-agreement")?.judgement.verdict;
  return { verdict, misfits: misfits.map(({ kind, clear }) => `${kind} ${clear ? "clear" : "less clear"}`) };
}

describe("what a check explains is no clear misfit", () => {
  test("Zs of a ring read near the board: the check expects it, and nothing else is sure of another reason", () => {
    const { verdict, misfits } = ring("0.28");
    expect(verdict).toBe("met");
    expect(misfits).toEqual(["circuit-readings less clear"]);
  });

  test("Zs lower than the loop before the ring is clear", () => {
    const { verdict, misfits } = ring("0.05");
    expect(verdict).toBe("not-met");
    expect(misfits).toContain("circuit-readings clear");
  });
});
