import { type Board, FIELDS_AT, type InspectionFile } from "@good-grounds/inspection";
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

/** How readings of a part of the file were taken and what was noted with them, each once with the readings, by the names of their fields. */
export function methodsIn(
  readings: Readonly<Record<string, unknown>> | undefined,
  labels: Readonly<Record<string, { readonly label: string }>>,
): readonly string[] {
  const places = new Map<string, string[]>();
  for (const [name, reading] of Object.entries(readings ?? {})) {
    if (typeof reading !== "object" || reading === null || !("shown" in reading)) continue;
    const { method, note } = reading as { readonly method?: string; readonly note?: string };
    for (const said of [method, note])
      if (said !== undefined) places.set(said, [...(places.get(said) ?? []), labels[name]?.label ?? name]);
  }
  return [...places].map(([said, names]) => REPORT.reason(said, names));
}

/** The same for the origin; a bond says it beside its resistance. */
export function supplyMethods({ supply }: InspectionFile): readonly string[] {
  return methodsIn(supply.readings, FIELDS_AT["supply/readings"]);
}
