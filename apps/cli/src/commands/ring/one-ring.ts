import type { Issue, Path } from "@good-grounds/core";
import { type Installation, parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { EXIT, Stop } from "../../host.ts";

/** What is given of a ring, in the order in which `--help` shows it: where it stands in a circuit, and what it is. */
export const RING_NEEDS = Object.freeze({
  r1: { at: ["readings", "r1", "shown"], words: "line conductor end to end, as the display showed it", hint: "0.44 Ω" },
  rn: { at: ["readings", "rn", "shown"], words: "neutral conductor end to end", hint: "0.44 Ω" },
  r2: { at: ["readings", "r2", "shown"], words: "protective conductor end to end", hint: "0.73 Ω" },
  point: {
    at: ["readings", "crossLineNeutral"],
    words:
      "a point with its cross-connected readings, line to neutral and then line to cpc; a dash for one not taken. " +
      "Repeat for every point, in their order round the ring",
    hint: "kitchen; 0.22 Ω; 0.29 Ω",
  },
  line: { at: ["cable", "line"], words: "size of the line conductor", hint: "2.5 mm²" },
  neutral: { at: ["cable", "neutral"], words: "size of the neutral conductor, where it is another", hint: "2.5 mm²" },
  cpc: { at: ["cable", "cpc"], words: "size of the protective conductor", hint: "1.5 mm²" },
  material: { at: ["cable", "material"], words: "copper or aluminium; without it sizes say nothing", hint: "copper" },
  length: { at: ["cable", "length"], words: "length round the ring, where it is known", hint: "58 m, or 50 m to 65 m" },
  temperature: {
    at: ["readings", "temperature", "shown"],
    words: "temperature of the conductors during the test",
    hint: "15 °C",
  },
  accuracy: {
    at: ["instruments", 0, "accuracy", "continuity"],
    words: "accuracy of the continuity range, as its maker states it",
    hint: "±(2 % + 2 digits)",
  },
} satisfies Record<string, { readonly at: Path; readonly words: string; readonly hint: string }>);

type RingNeed = keyof typeof RING_NEEDS;

type Made =
  | { readonly ok: true; readonly installation: Installation }
  | { readonly ok: false; issues: readonly Issue[] };

/** An installation that holds one ring final circuit, from "r1=0.44 Ω" pairs; all problems at once, by the names used. */
export function oneRing(pairs: readonly string[]): Made {
  const said = new Map<RingNeed, string>();
  const points: string[] = [];
  for (const pair of pairs) {
    const at = pair.indexOf("=");
    const name = pair.slice(0, Math.max(at, 0));
    if (!isNeed(name)) {
      throw new Stop(
        EXIT.input,
        `ring: ${JSON.stringify(pair.slice(0, 60))} is nothing it knows. It takes ${Object.keys(RING_NEEDS).join(", ")}, each as name=value; \`goodgrounds ring --help\` says what they are.`,
      );
    }
    const value = pair.slice(at + 1);
    if (name === "point") points.push(value);
    else if (said.has(name)) throw new Stop(EXIT.input, `ring: ${name} is given twice. Give it once.`);
    else said.set(name, value);
  }
  const read = points.map(pointOf);
  const parsed = parseInspection(JSON.stringify(fileOf(said, read)));
  if (!parsed.ok) return { ok: false, issues: parsed.issues.map((issue) => asTyped(issue, read)) };
  return { ok: true, installation: resolveInstallation(parsed.file) };
}

interface Point {
  readonly name: string;
  readonly lineNeutral: string;
  readonly lineCpc: string;
}

const NOT_TAKEN: ReadonlySet<string> = new Set(["", "-", "–", "—"]);

function pointOf(text: string): Point {
  const parts = text.split(";").map((part) => part.trim());
  const [name = "", lineNeutral = "", lineCpc = ""] = parts;
  if (name === "" || parts.length > 3 || (NOT_TAKEN.has(lineNeutral) && NOT_TAKEN.has(lineCpc))) {
    throw new Stop(
      EXIT.input,
      `ring: point=${JSON.stringify(text.slice(0, 60))} is not a point with its readings. Write point="NAME; L–N; L–cpc", for example point="${RING_NEEDS.point.hint}", with a dash for one not taken.`,
    );
  }
  return { name, lineNeutral, lineCpc };
}

function fileOf(said: ReadonlyMap<RingNeed, string>, points: readonly Point[]): object {
  const shown = (text: string) => ({ shown: text, with: "meter" });
  const reading = (need: RingNeed) => (said.has(need) ? { [need]: shown(said.get(need) ?? "") } : {});
  const value = (need: RingNeed) => (said.has(need) ? { [need]: span(said.get(need) ?? "") } : {});
  const cross = (key: "lineNeutral" | "lineCpc") =>
    points
      .filter((point) => !NOT_TAKEN.has(point[key]))
      .map((point) => ({ point: point.name, reading: shown(point[key]) }));
  const accuracy = said.get("accuracy");
  return {
    ...AROUND,
    instruments: [
      {
        id: "meter",
        kind: "meter",
        serial: "not stated",
        ...(accuracy === undefined ? {} : { accuracy: { continuity: accuracy } }),
      },
    ],
    boards: [
      {
        id: "board",
        name: "Board",
        fedFrom: "supply",
        circuits: [
          {
            id: "ring",
            designation: "ring",
            description: "ring final circuit",
            shape: "ring",
            cable: { ...value("line"), ...value("neutral"), ...value("cpc"), ...value("material"), ...value("length") },
            readings: {
              ...reading("r1"),
              ...reading("rn"),
              ...reading("r2"),
              ...reading("temperature"),
              crossLineNeutral: cross("lineNeutral"),
              crossLineCpc: cross("lineCpc"),
            },
          },
        ],
      },
    ],
  };
}

/** What an inspection file has around a circuit, where nothing is known of it. */
const AROUND = Object.freeze({
  format: "good-grounds-inspection",
  version: 3,
  id: "one-ring",
  edition: "2018+A4",
  inspectedOn: "2026-10-20",
  brief: {
    client: { name: "not stated" },
    premises: { address: ["not stated"] },
    use: "dwelling",
    tenure: "owner-occupied",
    nation: "england",
    purpose: "one ring final circuit",
    records: [],
  },
  visits: [{ date: "2026-10-20" }],
  people: [],
  extent: { covered: "one ring final circuit", sampling: [] },
  limitations: [],
  supply: { bonding: [] },
  inspected: [],
  observations: [],
  photographs: [],
  signatures: [],
});

/** "50 m to 65 m" as a range. */
function span(text: string): string | { readonly from: string; readonly to: string } {
  const [from = "", to, ...more] = text.split(/\s+to\s+/);
  return to === undefined || more.length > 0 ? text : { from, to };
}

/** An issue at the place in the file that was made, as one of what was typed. */
function asTyped(issue: Issue, points: readonly Point[]): Issue {
  const inCircuit = issue.path[0] === "boards" ? issue.path.slice(4) : issue.path;
  const cross = inCircuit[1] === "crossLineNeutral" ? "lineNeutral" : "lineCpc";
  if (inCircuit[0] === "readings" && typeof inCircuit[2] === "number") {
    const point = points.filter((one) => !NOT_TAKEN.has(one[cross]))[inCircuit[2]];
    return { ...issue, path: ["point", point?.name ?? String(inCircuit[2] + 1)] };
  }
  const need = Object.entries(RING_NEEDS).find(
    ([name, { at }]) => name !== "point" && at.every((step, i) => i >= inCircuit.length || inCircuit[i] === step),
  );
  return need === undefined ? issue : { ...issue, path: [need[0]] };
}

function isNeed(name: string): name is RingNeed {
  return Object.hasOwn(RING_NEEDS, name);
}
