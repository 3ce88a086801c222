import { LARGEST } from "@good-grounds/inspection";

/** A line of a stream with its number, as bytes of its own, or the news that it is too long to be read. */
export type Line =
  | { readonly number: number; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly number: number; readonly tooLong: true };

const LINE_FEED = 10;

/**
 * Lines of a stream, one at a time; memory holds one line. They stay bytes, so that they can be handed to a worker
 * without filling the heap. A line that is too long is skipped to its end.
 */
export async function* linesOf(stream: AsyncIterable<Uint8Array | string>): AsyncGenerator<Line> {
  let pieces: Uint8Array[] = [];
  let size = 0;
  let number = 1;
  const add = (piece: Uint8Array) => {
    size += piece.length;
    if (size <= LARGEST) pieces.push(piece);
    else pieces = [];
  };
  const finish = (): Line => {
    const line: Line = size > LARGEST ? { number, tooLong: true } : { number, bytes: joined(pieces, size) };
    pieces = [];
    size = 0;
    number += 1;
    return line;
  };
  for await (const chunk of stream) {
    const bytes = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
    let from = 0;
    for (let end = bytes.indexOf(LINE_FEED); end >= 0; end = bytes.indexOf(LINE_FEED, from)) {
      add(bytes.subarray(from, end));
      from = end + 1;
      yield finish();
    }
    if (from < bytes.length) add(bytes.subarray(from));
  }
  if (size > 0) yield finish();
}

/** One array with memory of its own, which can be given away. */
function joined(pieces: readonly Uint8Array[], size: number): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
