import { type OwnFigures, pointer } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";

/** Name and version of the output; the version changes when a member changes its meaning or goes. */
const OUTPUT = Object.freeze({ format: "good-grounds-own-figures", version: 1 });

/** What is to be confirmed as plain data, heaviest first. */
export function ownFiguresJson(
  { toConfirm, notLookedAt, otherNotes }: OwnFigures,
  file: InspectionFile,
  earlier: InspectionFile | undefined,
): object {
  return {
    ...OUTPUT,
    file: file.id,
    invented: file.invented === true,
    earlier: earlier?.id ?? null,
    toConfirm: toConfirm.map(({ readings, ...one }) => ({
      ...one,
      readings: readings.map(({ detail }) => ({ place: pointer(detail.path), text: detail.text })),
    })),
    notLookedAt,
    otherNotes,
  };
}
