import type { OpenPoint } from "@good-grounds/core";
import type { ReportInput } from "../input.ts";
import { type Numbered, numbered } from "../words/observation-number.ts";

/** Why an observation counts as danger now. */
type DangerStanding =
  | { readonly kind: "chosen" }
  | { readonly kind: "unclassified" }
  | { readonly kind: "below"; readonly chosen: string; readonly reason: string | null };

export interface Danger extends Pick<Numbered, "number" | "observation"> {
  readonly standing: DangerStanding;
}

/**
 * Danger now: what the inspector classified C1, and what the stated facts make C1 although it is not classified or was
 * chosen lower. Whoever may be hurt is told of both, and which is which.
 */
export function dangersOf(input: ReportInput): readonly Danger[] {
  const { outcome, installation } = input;
  const below = new Map(outcome.below.filter(({ follows }) => follows === "C1").map((one) => [one.observation, one]));
  const unclassified = new Set(
    outcome.points.flatMap((point) =>
      point.kind === "unclassified" && point.follows === "C1"
        ? point.places.map(([, index]) => installation.file.observations[Number(index)]?.id)
        : [],
    ),
  );
  return numbered(installation.file).flatMap(({ number, group, observation }): readonly Danger[] => {
    const lower = below.get(observation.id);
    if (group === "C1") return [{ number, observation, standing: { kind: "chosen" } }];
    if (lower !== undefined)
      return [{ number, observation, standing: { kind: "below", chosen: lower.chosen, reason: lower.reason } }];
    return unclassified.has(observation.id) ? [{ number, observation, standing: { kind: "unclassified" } }] : [];
  });
}

type Opened = Extract<OpenPoint, { readonly kind: "opened" }>;

/** Danger now that the recorded installation shows by itself and of which no observation speaks. */
export function dangersUnspoken({ outcome: { points } }: ReportInput): readonly Opened[] {
  return points.flatMap((point) =>
    point.kind === "opened" && point.possible.length > 0 && point.possible.every((one) => one === "C1") ? [point] : [],
  );
}
