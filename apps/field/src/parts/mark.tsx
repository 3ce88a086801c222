import type { Classification } from "@good-grounds/core";
import { classificationMark } from "@good-grounds/report";

/** The mark of a classification with its letters. */
export function Mark({ of }: { readonly of: Classification }) {
  return (
    <span class="mark">
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: the mark is a constant drawing */}
      <span aria-hidden="true" dangerouslySetInnerHTML={{ __html: classificationMark(of) }} />
      <strong>{of}</strong>
    </span>
  );
}
