import type { Readable } from "node:stream";
import { LARGEST } from "@good-grounds/inspection";

/** A line of a stream with its number, or the news that it is too long to be read. */
export type Line =
  | { readonly number: number; readonly text: string }
  | { readonly number: number; readonly tooLong: true };

/** Lines of a UTF-8 stream, one at a time; memory holds one line. A line that is too long is skipped to its end. */
export async function* linesOf(stream: Readable): AsyncGenerator<Line> {
  const decoder = new TextDecoder("utf-8");
  let held: string[] = [];
  let size = 0;
  let number = 1;
  let tooLong = false;
  const finish = (): Line => {
    const line: Line = tooLong ? { number, tooLong: true } : { number, text: held.join("") };
    held = [];
    size = 0;
    tooLong = false;
    number += 1;
    return line;
  };
  const add = (piece: string) => {
    size += piece.length;
    if (size > LARGEST) {
      tooLong = true;
      held = [];
    } else if (!tooLong && piece !== "") held.push(piece);
  };
  for await (const chunk of stream) {
    const pieces = decoder.decode(typeof chunk === "string" ? Buffer.from(chunk) : chunk, { stream: true }).split("\n");
    for (let i = 0; i < pieces.length; i++) {
      add(pieces[i] as string);
      if (i < pieces.length - 1) yield finish();
    }
  }
  add(decoder.decode());
  if (held.length > 0 || tooLong) yield finish();
}
