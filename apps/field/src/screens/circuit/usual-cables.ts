import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";

/** Flat twin and cpc cables as they are made: live and protective conductor in mm². */
export const USUAL_CABLES: readonly (readonly [line: string, cpc: string])[] = [
  ["1", "1"],
  ["1.5", "1"],
  ["2.5", "1.5"],
  ["4", "1.5"],
  ["6", "2.5"],
  ["10", "4"],
  ["16", "6"],
];

/** The places of a circuit that choosing a usual cable writes. */
export function cableChanges(
  circuit: string,
  [line, cpc]: (typeof USUAL_CABLES)[number],
): readonly (readonly [string, Value])[] {
  return Object.entries({
    kind: "flat-twin-and-cpc",
    insulation: "70C-thermoplastic",
    material: "copper",
    line: `${line} mm²`,
    cpc: `${cpc} mm²`,
    cpcArrangement: "in-cable",
  }).map(([name, value]) => [join(circuit, `cable/${name}`), value] as const);
}
