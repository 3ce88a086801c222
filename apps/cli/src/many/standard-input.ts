import type { Readable } from "node:stream";
import { gathered } from "../read.ts";
import { linesOf } from "./lines.ts";
import { type Item, itemsOfLines } from "./sources.ts";

const NAME = "standard input";
const LINE_FEED = 10;

/**
 * Inspections from standard input: a stream when its first line is a document of its own, otherwise one document. It is
 * split into lines only where it is a stream: a document of very many short lines is read as a whole.
 */
export async function* itemsOfInput(stdin: Readable): AsyncGenerator<Item> {
  const chunks = chunksOf(stdin);
  const start = await gathered(leftOpen(chunks), NAME, (chunk) => chunk.includes(LINE_FEED));
  const end = start.indexOf(LINE_FEED);
  const all = chained(start, chunks);
  if (isDocument(end < 0 ? start : start.subarray(0, end))) yield* itemsOfLines(NAME, linesOf(all));
  else yield { name: NAME, bytes: new Uint8Array(await gathered(all, NAME)) };
}

async function* chunksOf(stream: Readable): AsyncGenerator<Uint8Array> {
  for await (const chunk of stream) yield typeof chunk === "string" ? Buffer.from(chunk) : chunk;
}

/** The same chunks for a reader that stops early, without closing what is read on later. */
function leftOpen(chunks: AsyncGenerator<Uint8Array>): AsyncIterable<Uint8Array> {
  return { [Symbol.asyncIterator]: () => ({ next: () => chunks.next() }) };
}

async function* chained(start: Uint8Array, rest: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  yield start;
  yield* rest;
}

function isDocument(line: Uint8Array): boolean {
  try {
    return typeof JSON.parse(new TextDecoder().decode(line)) === "object";
  } catch {
    return false;
  }
}
