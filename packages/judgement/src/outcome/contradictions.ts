import type { OpenPoint } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { ObservationReasoning } from "../reasoning/results.ts";
import { isWrittenReason } from "./written-reason.ts";

/** Observations that state otherwise than is known, and of which nobody wrote why: one point with their places. */
export function contradictions(
  { observations }: Installation,
  reasoned: readonly ObservationReasoning[],
): readonly OpenPoint[] {
  const places = reasoned.flatMap(({ observation, path, against }) => {
    const reason = observations.find(({ id }) => id === observation)?.choice?.reason;
    return against.some(({ stated }) => stated !== null) && !isWrittenReason(reason) ? [path] : [];
  });
  return places.length === 0 ? [] : [{ kind: "contradiction", places }];
}
