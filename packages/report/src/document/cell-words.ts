import type { Cell } from "../pdf/cell.ts";
import type { Inline } from "./model.ts";

/** Words of a cell as pieces: gaps stay gaps. */
export function wordsOfCell({ words, open, parts }: Cell): readonly Inline[] {
  if (parts !== undefined) return parts.flatMap(wordsOfCell);
  return [open ? { text: words, as: "gap" } : { text: words }];
}
