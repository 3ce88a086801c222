import { type Circumstance, type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { inspectedItems } from "../../examples/scenarios/common.ts";
import { assemble } from "../../packages/assembly/src/index.ts";

/** A file as plain data, to be changed. */
export type Data = Record<string, unknown>;

interface Told {
  readonly supply?: { readonly earthing?: unknown; readonly otherSources?: readonly { readonly kind: string }[] };
  readonly boards?: readonly { readonly circuits?: readonly { readonly load?: unknown }[] }[];
}

const OF_A_LOAD: Readonly<Record<string, Circumstance>> = {
  shower: "bath-or-shower",
  "vehicle-charging": "vehicle-charging",
};
const OF_A_SOURCE: Readonly<Record<string, Circumstance>> = {
  photovoltaic: "photovoltaic",
  battery: "battery",
  generator: "generator",
};

/** What is there by what the file tells of the supply and of the loads. */
function circumstances({ supply, boards = [] }: Told): readonly Circumstance[] {
  const loads = boards.flatMap(({ circuits = [] }) => circuits.map(({ load }) => OF_A_LOAD[String(load)] ?? []));
  const sources = (supply?.otherSources ?? []).flatMap(({ kind }) => [
    "other-source" as const,
    OF_A_SOURCE[kind] ?? [],
  ]);
  return [
    "dwelling",
    ...(supply?.earthing === "TT" ? ["earth-electrode" as const] : []),
    ...loads.flat(),
    ...sources.flat(),
  ];
}

/** A tested installation as a finished inspection: every item answered as it is there or not. */
export function complete(file: object): Data {
  const data = structuredClone(file) as Data;
  data.inspected = inspectedItems(circumstances(data as Told), {}, {});
  return data;
}

/** The outcome of a file with its open points. */
export function outcomeOfData(data: object) {
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return assemble(parsed.file as InspectionFile).outcome;
}
