import { readFileSync } from "node:fs";
import { type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { Chance } from "../../examples/simulate/chance.ts";
import type { RingReading } from "../../packages/readings/src/diagnosis/ring/index.ts";
import { inputOf, type Planted } from "./simulated-ring.ts";

const HOUSE = readFileSync(new URL("../../examples/terraced-house.json", import.meta.url), "utf8");

interface Document {
  readonly boards: { readonly circuits: { cable: Record<string, unknown>; readings: Record<string, unknown> }[] }[];
}

/** Distances of the eight points of a ring of 62 m, m. */
const POINTS = [5, 12, 18, 27, 33, 41, 48, 56];

/** The terraced house with its first circuit a simulated ring of 62 m, 2.5/1.5 mm², with one planted fault and eight points. */
export function houseWithRing(planted: Planted, seed: number, shared?: string): InspectionFile {
  const perMetre = [0.0072, 0.0072, 0.01174] as const;
  const ring = { metres: 62, points: POINTS, perMetre, nominal: [0.00741, 0.0121] as const, planted };
  const { r1, rn, r2, points } = inputOf(ring, new Chance(seed));
  const document = JSON.parse(HOUSE) as Document;
  const circuit = document.boards[0]?.circuits[0];
  if (circuit === undefined) throw new Error("no circuit");
  const read = ({ shown, bound }: RingReading) => ({
    shown: bound === "above" ? `>${shown} Ω` : `${shown.toFixed(2)} Ω`,
    with: "mft",
  });
  const { r1r2: _, zs: __, temperature: ___, ...others } = circuit.readings;
  circuit.cable.length = "62 m";
  circuit.readings = {
    ...others,
    r1: read(r1),
    rn: read(rn),
    r2: read(r2),
    crossLineNeutral: points.map(({ name, lineNeutral }) => ({
      point: name,
      reading: read(lineNeutral as RingReading),
    })),
    crossLineCpc: points.map(({ name, lineCpc }) => ({ point: name, reading: read(lineCpc as RingReading) })),
  };
  if (shared !== undefined)
    Object.assign(circuit, { sharedMisfits: [{ kind: shared, note: "Traced under the floor." }] });
  const parsed = parseInspectionData(document);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}
