import { misfitsOf } from "@good-grounds/assembly";
import { CHECKS } from "@good-grounds/computations";
import type { OpenPoint, Path } from "@good-grounds/core";
import { type DraftFile, parseInspectionData, resolveDraft, signatureStandings } from "@good-grounds/inspection";
import { outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import { dismissedWords, investigateWords, OPEN, type OpenPointContext, openPointWords } from "@good-grounds/report";
import type { Topics } from "@good-grounds/topics";
import { ENGINE } from "../../words/engine.ts";
import { draftOf } from "../draft.ts";
import type { OutcomeView } from "../outcome-view.ts";
import { recordPath } from "../places.ts";
import type { Data } from "../protocol.ts";

// What the law asks reads the outcome, and comes with it.
export { dutiesOfData } from "./duties.ts";

/** The outcome of a job as far as it goes, and what stands open, danger first. */
export function outcomeOfData(data: Data, topics?: Topics): OutcomeView {
  const draft = draftOf(data);
  if (draft === undefined) throw new Error(ENGINE.unreadable);
  const { file } = draft;
  const whole = draft.missing.length + draft.left.length > 0 ? undefined : parseInspectionData(data);
  const installation = resolveDraft(draft);
  const weighing = weigh(installation);
  const found = outcomeOf(
    installation,
    weighing,
    reasonObservations(installation, weighing, topics),
    misfitsOf(installation, weighing),
    topics,
  );
  const { outcome, points, below, dismissed, investigate } = found;
  const context = { installation, checks: CHECKS };
  const dismissals = dismissedWords(found, context);
  const investigations = investigateWords(found, context);
  const numbers = new Map(installation.observations.map(({ id }, i) => [id, i]));
  return {
    outcome,
    points: points.map((point) => ({
      path: screenPath(point, recordPath(point.places[0] ?? [], file)),
      words: openPointWords(point, context),
    })),
    toAnswer: points.flatMap((point) => toAnswer(point, file, context)),
    // A file that is not whole yet is not what anybody signed.
    signatures: whole?.ok === true ? signatureStandings(whole.file) : (file.signatures ?? []).map(() => "changed"),
    dismissed: dismissed.map(({ path }, i) => ({ path: recordPath(path, file), words: dismissals[i] ?? "" })),
    investigate: investigate.map((id, i) => ({
      path: recordPath(["observations", numbers.get(id) ?? 0], file),
      words: investigations[i] ?? "",
    })),
    below: below.map(({ path, follows, chosen, reason }) => ({
      path: recordPath(path, file),
      words: `${placeOf(file, path) || OPEN.noPlace}: ${OPEN.belowBeside(follows, chosen, reason)}`,
    })),
  };
}

/** Open points that an observation answers by naming them, beside the checks that are offered anyway. */
function toAnswer(point: OpenPoint, file: DraftFile, context: OpenPointContext): OutcomeView["toAnswer"] {
  const words = (path: Path) => openPointWords({ ...point, places: [path] }, context);
  switch (point.kind) {
    case "misfit":
      return point.places.map((path) => ({ check: point.misfit, path: recordPath(path, file), words: words(path) }));
    case "not-known":
      return point.places.map((path) => ({ check: point.check, path: recordPath(path, file), words: words(path) }));
    case "defective-sample":
      return point.places.map((path) => ({
        check: `defective-sample-${Number(path[2]) + 1}`,
        path: recordPath(path, file),
        words: words(path),
      }));
    default:
      return [];
  }
}

function placeOf({ observations = [] }: DraftFile, [, i]: Path): string {
  return typeof i === "number" ? (observations[i]?.place ?? "") : "";
}

/** Where a point is put right: what was not tested, among the readings of its place. */
function screenPath({ kind }: OpenPoint, path: string): string {
  if (kind !== "not-tested" && kind !== "nothing-tested") return path;
  const [board] = /^boards\/[^/]+(?=\/rcds\/)/.exec(path) ?? [];
  return `${board ?? path.replace(/\/rcd\/own$/, "")}/readings`;
}
