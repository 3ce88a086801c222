import { open, stat } from "node:fs/promises";
import { LARGEST } from "@good-grounds/inspection";
import { EXIT, Stop } from "./host.ts";
import { reason } from "./reason-of.ts";

/** Bytes are never fewer than characters, so nothing that would be accepted is refused at this size. */
const MOST_BYTES = LARGEST * 4;

/** Reads a file as UTF-8 text. Stops with "unreadable" when it is not there, not a file, or far too large to be one. */
export async function readText(path: string): Promise<string> {
  return decode(await readBytes(path), path);
}

/** Reads a file as bytes, under the same conditions. */
export async function readBytes(path: string): Promise<Buffer> {
  try {
    const { size } = await stat(path);
    if (size > MOST_BYTES) throw tooLarge(path, `${size} bytes`);
    return await bytesOf(path);
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw new Stop(
      EXIT.unreadable,
      `${path}: cannot be read (${reason(error)}). Check the name and that you may read it.`,
    );
  }
}

/** What a file or a pipe holds, but no more than is accepted: a device has no size and may never end. */
async function bytesOf(path: string): Promise<Buffer> {
  const file = await open(path);
  try {
    return await gathered(file.createReadStream({ autoClose: false, highWaterMark: 1 << 20 }), path);
  } finally {
    await file.close();
  }
}

/** All bytes of a stream, or up to the end of the chunk that `enough` is content with; never more than is accepted. */
export async function gathered(
  stream: AsyncIterable<Uint8Array>,
  name: string,
  enough: (chunk: Uint8Array) => boolean = () => false,
): Promise<Buffer> {
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of stream) {
    size += piece.length;
    if (size > MOST_BYTES) throw tooLarge(name, `more than ${MOST_BYTES} bytes`);
    pieces.push(piece);
    if (enough(piece)) break;
  }
  return Buffer.concat(pieces, size);
}

function tooLarge(path: string, size: string): Stop {
  return new Stop(
    EXIT.input,
    `${path}: ${size}, where at most ${MOST_BYTES} were expected. Photographs belong beside the file, not in it.`,
  );
}

/** Bytes as UTF-8 text; anything else stops with the name of what was read. */
export function decode(bytes: Uint8Array, name: string, expected = "a JSON document"): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Stop(EXIT.input, `${name}: not UTF-8 text, where ${expected} was expected. Save it as UTF-8.`);
  }
}
