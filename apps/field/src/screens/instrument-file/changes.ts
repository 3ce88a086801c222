import { hashOf } from "../../hand-over/hash.ts";
import type { Taken } from "../../instrument-file/plan.ts";
import type { Sheet } from "../../instrument-file/rows.ts";
import type { Value } from "../../record/entry.ts";
import { momentNow } from "../../shell/job.ts";

/** A file of an instrument that was opened and can be read. */
export interface Opened {
  readonly name: string;
  readonly text: string;
  readonly sheet: Sheet;
}

/** What taking in these readings of a file writes; the instrument is one of the job, or empty. */
export async function changesOf(
  { name, text }: Opened,
  ready: readonly Taken[],
  instrument: string,
): Promise<readonly (readonly [path: string, value: Value])[]> {
  const sha256 = await hashOf(new TextEncoder().encode(text));
  return [
    // The file as it was, so that every reading can be followed back to its line.
    [`~files/${sha256.slice(0, 16)}`, { name, sha256, at: momentNow(), text }],
    ...ready.map(({ path, shown, line }): readonly [string, Value] => [
      path,
      {
        shown,
        ...(instrument === "" ? {} : { with: instrument }),
        method: `from ${name.slice(0, 80)}, line ${line}`,
      },
    ]),
  ];
}
