import type { OpenPoint, Path } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { isWrittenReason } from "./written-reason.ts";

/** Danger (C1) of which it is recorded neither what made it safe and who was told, nor why nobody could be told. */
export function dangersUntold({ observations }: Installation): readonly OpenPoint[] {
  const places = observations.flatMap(({ choice, madeSafe, untold }, i): Path[] =>
    choice?.classification === "C1" && madeSafe === undefined && !isWrittenReason(untold) ? [["observations", i]] : [],
  );
  return places.length === 0 ? [] : [{ kind: "danger-untold", places }];
}
