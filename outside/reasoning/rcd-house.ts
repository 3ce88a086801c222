import { type Finding, missingOf } from "@good-grounds/core";
import { type InspectionFile, parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { reasonObservations, weigh } from "@good-grounds/judgement";
import { smallestFile } from "../files/arbitrary-file.ts";

/** What the test of an RCD in a file can show. */
const RCD_STATES = {
  works: { atRated: { shown: "24.3 ms" }, button: "trips" },
  "works, button dead": { atRated: { shown: "24.3 ms" }, button: "does-not-trip" },
  slow: { atRated: { shown: "612 ms" }, button: "trips" },
  dead: { atRated: { shown: ">1999 ms" }, button: "does-not-trip" },
  "button dead, no time": { button: "does-not-trip" },
  untested: {},
  limited: { atRated: { notTaken: "limited", reason: "freezers could not be switched off" } },
} as const;
export type RcdState = keyof typeof RCD_STATES;

/** States in which nothing shows that the device protects anybody. */
export const FAILED = ["slow", "dead"] as const satisfies readonly RcdState[];
export const OPEN = ["button dead, no time", "untested", "limited"] as const satisfies readonly RcdState[];

/** An RCD without delay. */
export function rcd(residual: string, state: RcdState) {
  return { standard: "BS EN 61008", type: "A", delay: "general", residual, readings: RCD_STATES[state] };
}

/** A delayed RCD; one that works takes a little longer than a general one may, as it has to. */
export function delayedRcd(residual: string, state: RcdState) {
  const readings = state === "works" ? { atRated: { shown: "212 ms" }, button: "trips" } : RCD_STATES[state];
  return { standard: "BS EN 61008", type: "A", delay: "S", residual, readings };
}

type RcdEntry = ReturnType<typeof rcd> | ReturnType<typeof delayedRcd>;

/** RCDs of the house by where they stand; left out, there is none. */
interface Rcds {
  readonly circuit?: RcdEntry;
  readonly board?: RcdEntry;
  /** In the circuit that feeds the board, at the origin. */
  readonly feeder?: RcdEntry;
}

/** Changes to a sound socket circuit of a home on TT: Zs 91 Ω, B32, 2.5/1.5 mm² twin. */
export interface House {
  readonly rcds: Rcds;
  readonly earthing?: "TT" | "TN-S";
  readonly circuit?: Readonly<Record<string, unknown>>;
  /** Changes to the supply; a member that is undefined is left out. */
  readonly supply?: Readonly<Record<string, unknown>>;
  readonly observation?: Readonly<Record<string, unknown>>;
}

function rcdHouse({ rcds, earthing = "TT", circuit = {}, supply = {}, observation }: House): InspectionFile {
  const parsed = parseInspectionData({
    ...smallestFile(),
    people: [{ id: "inspector", name: "An inspector" }],
    supply: {
      earthing,
      phases: 1,
      nominalVoltage: "230 V",
      device: { standard: "BS 1361", type: "II", rated: "100 A" },
      bonding: [],
      readings: earthing === "TT" ? { ra: { shown: "90 Ω" } } : { ze: { shown: "0.35 Ω" } },
      ...supply,
    },
    boards: [
      {
        id: "origin",
        name: "Origin",
        fedFrom: "supply",
        circuits: [
          {
            id: "feed",
            designation: "1",
            description: "board of the house",
            shape: "distribution",
            load: "board",
            rcd: rcds.feeder === undefined ? "none" : { own: rcds.feeder },
          },
        ],
      },
      {
        id: "b",
        name: "Board",
        fedFrom: { board: "origin", circuit: "feed" },
        rcds: rcds.board === undefined ? [] : [{ id: "main", serves: "whole-board", ...rcds.board }],
        readings: { zdb: { shown: earthing === "TT" ? "90.4 Ω" : "0.42 Ω" } },
        circuits: [
          {
            id: "c",
            designation: "1",
            description: "sockets and lights",
            shape: "radial",
            load: "socket-outlets",
            device: { standard: "BS EN 60898", type: "B", rated: "32 A" },
            rcd: rcds.circuit === undefined ? "none" : { own: rcds.circuit },
            cable: {
              kind: "flat-twin-and-cpc",
              insulation: "70C-thermoplastic",
              material: "copper",
              line: "2.5 mm²",
              cpc: "1.5 mm²",
              cpcArrangement: "in-cable",
            },
            readings: { zs: { shown: earthing === "TT" ? "91 Ω" : "0.82 Ω" }, r1r2: { shown: "0.40 Ω" } },
            ...circuit,
          },
        ],
      },
    ],
    observations: observation === undefined ? [] : [{ id: "x", place: "house", what: "something", ...observation }],
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

/** The finding of a check about the socket circuit, or about the supply. */
export function findingOf(house: House, check: string): Finding {
  const { supply, circuits } = weigh(resolveInstallation(rcdHouse(house)));
  const found = [...(circuits[1] ?? []), ...supply].find((finding) => finding.check === check);
  if (found === undefined) throw new Error(`no finding of ${check}`);
  return found;
}

export function verdictOf(house: House, check: string) {
  return findingOf(house, check).judgement.verdict;
}

/** What would settle a finding, by ids. */
export function missing(house: House, check: string): readonly string[] {
  const leaves = missingOf(findingOf(house, check).judgement);
  return leaves.map((leaf) => (leaf.kind === "not-known" ? leaf.term.id : leaf.matter.id));
}

/** The house, resolved and weighed. */
export function weighedHouse(house: House) {
  const installation = resolveInstallation(rcdHouse(house));
  return { installation, weighing: weigh(installation) };
}

/** The reasoning of the one observation of the house. */
export function reasonedIn(house: House) {
  const { installation, weighing } = weighedHouse(house);
  const [one] = reasonObservations(installation, weighing);
  if (one === undefined) throw new Error("not reasoned about");
  return one;
}
