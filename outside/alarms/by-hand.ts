import { COMPUTATIONS, givenFromText } from "@good-grounds/computations";
import { Reckoner, type Verdict } from "@good-grounds/core";
import type { Written, WrittenBoard, WrittenCircuit } from "./site/write.ts";

type Given = Record<string, string | string[]>;

interface ByHand {
  readonly check: "zs-agreement" | "ring-continuity" | "r1r2-length";
  readonly verdict: Verdict;
}

/** Three checks as somebody runs them alone, with the figures of each circuit typed in and not a word on the instrument. */
export function computedByHand(file: Written): readonly ByHand[] {
  return file.boards.flatMap((board) =>
    board.circuits.flatMap((circuit) => {
      const found: ByHand[] = [];
      for (const [check, given] of asked(file, board, circuit))
        if (given !== null) found.push({ check, verdict: verdictOf(check, given) });
      return found;
    }),
  );
}

function verdictOf(check: string, given: Given): Verdict {
  const computation = COMPUTATIONS.get(check);
  if (computation === undefined || !("conclude" in computation)) throw new Error(`no check is called ${check}`);
  const made = givenFromText(computation.needs, given);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return computation.conclude(made.given, new Reckoner(false)).judgement.verdict;
}

function shown(readings: Readonly<Record<string, unknown>>, name: string): string | undefined {
  const entry = readings[name];
  return typeof entry === "object" && entry !== null && "shown" in entry ? String(entry.shown) : undefined;
}

/** What has a value, or nothing at all where one that is needed has none. */
function complete(given: Readonly<Record<string, string | readonly string[] | undefined>>): Given | null {
  const entries = Object.entries(given);
  return entries.some(([, value]) => value === undefined) ? null : (Object.fromEntries(entries) as Given);
}

function asked(file: Written, board: WrittenBoard, { cable, readings, ...circuit }: WrittenCircuit) {
  const text = (name: string) => (typeof cable[name] === "string" ? String(cable[name]) : undefined);
  const made = { line: text("line"), cpc: text("cpc"), material: text("material"), length: text("length") };
  const warm = shown(readings, "temperature");
  const ring = (circuit as { shape?: unknown }).shape === "ring";
  const zdb = shown(board.readings, "zdb");
  const before = zdb === undefined && board.id === "main" ? { ze: shown(file.supply.readings, "ze") } : { zdb };
  const zs = shown(readings, "zs");
  const r1r2 = shown(readings, "r1r2");
  const cross = (name: string) =>
    ((readings[name] ?? []) as { reading: { shown: string } }[]).map(({ reading }) => reading.shown);
  return [
    ["zs-agreement", complete({ zs, r1r2, ...before })],
    ["r1r2-length", ring ? null : complete({ r1r2, ...made, temperature: warm })],
    [
      "ring-continuity",
      ring
        ? complete({
            r1: shown(readings, "r1"),
            rn: shown(readings, "rn"),
            r2: shown(readings, "r2"),
            crossLineNeutral: cross("crossLineNeutral"),
            crossLineCpc: cross("crossLineCpc"),
            ...made,
            temperature: warm,
          })
        : null,
    ],
  ] as const;
}
