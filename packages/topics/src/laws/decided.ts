import { bitsOf, type CompiledPath, LAYER_STATES, possibleLeaves, SEVERITIES } from "@good-grounds/core";
import type { Statement } from "../document/document.ts";
import type { LawSubject } from "./law.ts";

const HOLDS = { gone: "gone", "by-one": "there until one event", sound: "sound" } as const;

/** The routes, departures and dangers that hold, or may hold, under what is known: what decided, each with its place. */
export function decidedBy(
  { compiled, document, shared = [] }: LawSubject,
  masks: readonly number[],
): readonly string[] {
  const may = (node: number) => bitsOf(possibleLeaves(compiled, node, masks));
  const found = <K extends Statement["kind"]>(kind: K, is: (one: Extract<Statement, { kind: K }>) => boolean) => {
    for (const { file, statements } of [document, ...shared])
      for (const one of statements)
        if (one.kind === kind && is(one as Extract<Statement, { kind: K }>))
          return `${one.at.file ?? file}:${one.at.line}  `;
    return "";
  };
  const routes = compiled.paths.flatMap((one) => {
    const worst = Math.max(...may(one.severity));
    if (worst === 0) return [];
    const place = found("route", ({ name }) => name.text === one.path.id);
    return [`${place}route ${one.path.id}: ${layersIn(one, may)} → ${severities(may(one.severity))}`];
  });
  const departures = compiled.departures.flatMap(({ departure, holds }) =>
    may(holds).includes(1)
      ? [`${found("departure", ({ clause }) => clause === departure.words)}departure: ${departure.words} → C3`]
      : [],
  );
  const dangers = compiled.dangers.flatMap(({ danger, holds }) =>
    may(holds).includes(1)
      ? [`${found("danger", ({ name }) => name.text === danger.id)}danger ${danger.id} → ${danger.least}`]
      : [],
  );
  return [...dangers, ...routes, ...departures];
}

function layersIn({ layers }: CompiledPath, may: (node: number) => readonly number[]): string {
  if (layers.length === 0) return "no layer in the way";
  return layers
    .map(
      ({ layer, state }) =>
        `${layer.id} ${may(state)
          .map((leaf) => HOLDS[LAYER_STATES[leaf] ?? "gone"])
          .join(" or ")}`,
    )
    .join(", ");
}

function severities(leaves: readonly number[]): string {
  return leaves.map((leaf) => SEVERITIES[leaf]).join(" or ");
}
