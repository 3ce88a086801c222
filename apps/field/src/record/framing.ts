import { checksum } from "./checksum.ts";

/**
 * Texts one behind the other in a file that is only ever added to. Each stands in a frame: a mark, the length, a checksum
 * of length and text, the text in UTF-8. Whatever happens to a part of the file, by a write cut short or by bytes that
 * changed, is lost by itself: what stands before and behind it is found again by its mark.
 */

/** Two bytes that no UTF-8 text holds, so that no text can be taken for a frame, and two of our own. */
const MARK = [0xff, 0x47, 0x47, 0xfe] as const;
/** The length comes behind the checksum, so that one stretch of bytes is summed. */
const [SUM_AT, LENGTH_AT, TEXT_AT] = [4, 8, 12] as const;

/** What could be read of such a file. */
export interface Unframed {
  readonly texts: readonly string[];
  /** Bytes that belong to no whole frame. */
  readonly damagedBytes: number;
}

/** A text in its frame. */
export function frame(text: string): Uint8Array {
  const encoded = new TextEncoder().encode(text);
  const bytes = new Uint8Array(TEXT_AT + encoded.length);
  const view = new DataView(bytes.buffer);
  bytes.set(MARK);
  view.setUint32(LENGTH_AT, encoded.length);
  bytes.set(encoded, TEXT_AT);
  view.setUint32(SUM_AT, checksum(bytes.subarray(LENGTH_AT)));
  return bytes;
}

/** Every text that stands in a whole frame, in the order in which they were written. */
export function unframe(bytes: Uint8Array): Unframed {
  const texts: string[] = [];
  const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
  let [at, damagedBytes] = [0, 0];
  while (at < bytes.length) {
    const end = endOfFrame(bytes, at);
    if (end === undefined) {
      const next = nextMark(bytes, at + 1);
      damagedBytes += next - at;
      at = next;
    } else {
      texts.push(decoder.decode(bytes.subarray(at + TEXT_AT, end)));
      at = end;
    }
  }
  return { texts, damagedBytes };
}

/** Where the whole frame that begins here ends; undefined where none does. */
function endOfFrame(bytes: Uint8Array, at: number): number | undefined {
  if (at + TEXT_AT > bytes.length || MARK.some((byte, i) => bytes[at + i] !== byte)) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset + at);
  const end = at + TEXT_AT + view.getUint32(LENGTH_AT);
  if (end > bytes.length) return undefined;
  return checksum(bytes.subarray(at + LENGTH_AT, end)) === view.getUint32(SUM_AT) ? end : undefined;
}

function nextMark(bytes: Uint8Array, from: number): number {
  const found = bytes.indexOf(MARK[0], from);
  return found === -1 ? bytes.length : found;
}
