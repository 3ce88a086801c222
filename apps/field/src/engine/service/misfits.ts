import { misfitsOf } from "@good-grounds/assembly";
import { resolveDraft } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { misfitTitle, misfitWords } from "@good-grounds/report";
import { ENGINE } from "../../words/engine.ts";
import { draftOf } from "../draft.ts";
import type { MisfitView } from "../misfit-view.ts";
import { recordPath } from "../places.ts";
import type { Data } from "../protocol.ts";

/** Readings of a job, as far as it goes, that do not agree: the same as in every other way out. */
export function misfitsOfData(data: Data): readonly MisfitView[] {
  const draft = draftOf(data);
  if (draft === undefined) throw new Error(ENGINE.unreadable);
  const installation = resolveDraft(draft);
  return misfitsOf(installation, weigh(installation)).map((misfit) => {
    const { readings, explanations, next, innocent } = misfitWords(misfit);
    return {
      path: recordPath(misfit.path, draft.file),
      title: misfitTitle(misfit),
      clear: misfit.clear,
      words: [...readings, ...explanations, ...next, innocent],
    };
  });
}
