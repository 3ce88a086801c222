import type { Readable } from "node:stream";
import { LARGEST } from "@good-grounds/inspection";
import { type Line, linesOf } from "./lines.ts";
import { type Item, itemsOfLines } from "./sources.ts";

const NAME = "standard input";

/** Inspections from standard input: a stream when its first line is a document of its own, otherwise one document. */
export async function* itemsOfInput(stdin: Readable): AsyncGenerator<Item> {
  const lines = linesOf(stdin);
  const first = await lines.next();
  if (first.done === true) return;
  if (isDocument(first.value)) {
    yield* itemsOfLines(NAME, chained(first.value, lines));
    return;
  }
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const line of chained(first.value, lines)) {
    size += "bytes" in line ? line.bytes.length + 1 : LARGEST + 1;
    // One document has to be held whole; what is longer than any inspection file is not read on.
    if (size > LARGEST) {
      yield { name: NAME, problem: `${NAME}: far longer than an inspection file can be` };
      return;
    }
    if ("bytes" in line) pieces.push(line.bytes, Uint8Array.of(10));
  }
  yield { name: NAME, bytes: new Uint8Array(Buffer.concat(pieces)) };
}

async function* chained(first: Line, rest: AsyncIterable<Line>): AsyncGenerator<Line> {
  yield first;
  yield* rest;
}

function isDocument(line: Line): boolean {
  try {
    return "bytes" in line && typeof JSON.parse(new TextDecoder().decode(line.bytes)) === "object";
  } catch {
    return false;
  }
}
