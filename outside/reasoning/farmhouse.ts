import { readFileSync } from "node:fs";
import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { reasonObservations, weigh } from "@good-grounds/judgement";

const FARMHOUSE = readFileSync(new URL("../../examples/farmhouse.json", import.meta.url), "utf8");

type Rcd = { id?: string; delay?: string; readings: Record<string, unknown> };
interface FarmCircuit {
  readonly id: string;
  rcd?: unknown;
  readonly readings: Record<string, unknown>;
  readonly cable: Record<string, unknown>;
  readonly device: Record<string, unknown>;
}

interface FarmBoard {
  readonly id: string;
  readonly readings: Record<string, unknown>;
  readonly rcds: Rcd[];
  readonly circuits: FarmCircuit[];
}

/** The farmhouse as its file has it, with one observation of its own. */
export interface Farm {
  readonly observations: unknown[];
  readonly supply: Record<string, unknown> & { bonding: Record<string, unknown>[] };
  readonly boards: readonly FarmBoard[];
}

/** The invented farmhouse on TT, changed, with one observation, weighed and reasoned about. */
export function farmhouse(observation: Record<string, unknown>, edit: (farm: Farm) => void = () => {}) {
  const farm = JSON.parse(FARMHOUSE) as Farm;
  edit(farm);
  Object.assign(farm, {
    observations: [{ id: "x", place: "somewhere", what: "something", ...observation }],
    inspected: [],
    signatures: [],
  });
  const parsed = parseInspectionData(farm);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const installation = resolveInstallation(parsed.file);
  const weighing = weigh(installation);
  const [one] = reasonObservations(installation, weighing);
  if (one === undefined) throw new Error("not reasoned about");
  return { installation, weighing, one };
}

/** Every RCD of the farm's house tested dead: no trip before the display ended, and a button that does nothing. */
export function deadRcds({ boards }: Farm): void {
  for (const { rcds, circuits } of boards) {
    for (const rcd of rcds) rcd.readings = DEAD;
    for (const circuit of circuits)
      if (isOwn(circuit.rcd)) circuit.rcd = { own: { ...circuit.rcd.own, readings: DEAD } };
  }
}

const DEAD = { atRated: { shown: ">1999 ms" }, button: "does-not-trip" };

function isOwn(rcd: unknown): rcd is { own: object } {
  return typeof rcd === "object" && rcd !== null && "own" in rcd;
}
