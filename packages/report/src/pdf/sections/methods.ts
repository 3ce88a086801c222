import type { Board, InspectionFile } from "@good-grounds/inspection";
import { REPORT } from "../../locales/report-en.ts";

type WrittenCircuits = InspectionFile["boards"][number]["circuits"];
type ReadingName = keyof typeof REPORT.readingName;

/** How readings of a board's circuits were taken and what was noted with them, where anything was: each once, with the places. */
export function methods({ circuits }: Board, written: WrittenCircuits): readonly string[] {
  const places = new Map<string, Map<string, string[]>>();
  for (const [i, { readings = {}, rcd }] of written.entries()) {
    const own = typeof rcd === "object" && "own" in rcd ? rcd.own.readings : undefined;
    const all = { ...readings, timeAtRated: own?.atRated, timeAtFive: own?.atFive };
    for (const [name, reading] of Object.entries(all)) {
      if (typeof reading !== "object" || !("shown" in reading)) continue;
      for (const said of [reading.method, reading.note].filter((words) => words !== undefined)) {
        const at = places.get(said) ?? new Map<string, string[]>();
        const label = name in REPORT.readingName ? REPORT.readingName[name as ReadingName] : name;
        at.set(label, [...(at.get(label) ?? []), circuits[i]?.designation ?? String(i + 1)]);
        places.set(said, at);
      }
    }
  }
  return [...places].map(([said, at]) =>
    REPORT.reason(
      said,
      [...at].map(([label, numbers]) =>
        numbers.length === circuits.length && numbers.length > 1
          ? REPORT.everyCircuit(label)
          : REPORT.ofCircuits(label, numbers),
      ),
    ),
  );
}
