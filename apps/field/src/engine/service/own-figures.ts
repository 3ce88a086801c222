import { type InspectionFile, parseInspectionData, resolveDraft } from "@good-grounds/inspection";
import { lookAtOwnFigures } from "@good-grounds/readings";
import { placeWords } from "@good-grounds/report";
import { draftOf } from "../draft.ts";
import type { ToConfirm } from "../outcome-view.ts";
import type { Data } from "../protocol.ts";

/** What is worth a second look in one's own figures, heaviest first. It is for the inspector alone. */
export function ownFiguresOf(data: Data, earlier: Data | undefined): readonly ToConfirm[] {
  const draft = draftOf(data);
  if (draft === undefined) return [];
  const installation = resolveDraft(draft);
  return lookAtOwnFigures(installation, earlierFile(earlier)).toConfirm.map(
    ({ check, title, test, words, numbers, readings, innocent, notes }) => ({
      check,
      title,
      test,
      words,
      numbers: numbers.map(({ what, value }) => `${what}: ${value}`),
      readings: readings.map(
        ({ detail, term }) => `${placeWords(detail.path, installation)}: ${term.symbol || term.name} ${detail.text}`,
      ),
      innocent,
      notes,
    }),
  );
}

function earlierFile(data: Data | undefined): InspectionFile | undefined {
  if (data === undefined) return undefined;
  const parsed = parseInspectionData(data);
  return parsed.ok ? parsed.file : undefined;
}
