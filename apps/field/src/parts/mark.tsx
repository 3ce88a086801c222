import type { Classification } from "@good-grounds/core";
import { classificationMark } from "@good-grounds/report";

/** The mark of a classification with its letters. */
export function Mark({ of }: { readonly of: Classification }) {
  return (
    <span class="mark">
      <span aria-hidden="true" dangerouslySetInnerHTML={{ __html: classificationMark(of) }} />
      <strong>{of}</strong>
    </span>
  );
}
