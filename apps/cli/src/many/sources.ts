import { createReadStream } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import type { Readable } from "node:stream";
import { EXIT, Stop } from "../host.ts";
import { readBytes } from "../read.ts";
import { reason } from "../reason-of.ts";
import { type Line, linesOf } from "./lines.ts";

/** One inspection to be weighed: its bytes, or why there are none. */
export interface Item {
  readonly name: string;
  readonly bytes?: Uint8Array<ArrayBuffer>;
  readonly problem?: string;
  /** Whether the problem is that it cannot be read, rather than what was read. */
  readonly unreadable?: boolean;
}

/** Whether a path stands for many inspections: a folder, or a stream with one a line. */
export async function isMany(path: string): Promise<boolean> {
  if (/\.(jsonl|ndjson)$/i.test(path)) return true;
  try {
    return (await stat(path)).isDirectory();
  } catch (error) {
    throw new Stop(
      EXIT.unreadable,
      `${path}: cannot be read (${reason(error)}). Check the name and that you may read it.`,
    );
  }
}

/** Every inspection of the paths, in order. A file that cannot be read is an item with its problem; the rest goes on. */
export async function* itemsOf(paths: readonly string[], stdin: Readable): AsyncGenerator<Item> {
  for (const path of paths) {
    try {
      if (path === "-") yield* itemsOfLines("standard input", linesOf(stdin));
      else if (/\.(jsonl|ndjson)$/i.test(path)) yield* itemsOfFile(path);
      else if (await isMany(path)) yield* itemsOfFolder(path);
      else yield await itemOfFile(path);
    } catch (error) {
      yield problemOf(path, error);
    }
  }
}

async function* itemsOfFolder(path: string): AsyncGenerator<Item> {
  const names = (await readdir(path)).filter((name) => name.toLowerCase().endsWith(".json")).sort();
  for (const name of names) yield await itemOfFile(join(path, name));
}

async function* itemsOfFile(path: string): AsyncGenerator<Item> {
  const stream = createReadStream(path);
  try {
    yield* itemsOfLines(path, linesOf(stream));
  } finally {
    stream.destroy();
  }
}

/** The last byte that is white space in JSON. */
const SPACE = 32;

export async function* itemsOfLines(name: string, lines: AsyncIterable<Line>): AsyncGenerator<Item> {
  for await (const line of lines) {
    const where = `${name}:${line.number}`;
    if ("tooLong" in line)
      yield { name: where, problem: `${where}: the line is longer than an inspection file can be` };
    else if (line.bytes.some((byte) => byte > SPACE)) yield { name: where, bytes: line.bytes };
  }
}

async function itemOfFile(path: string): Promise<Item> {
  try {
    return { name: path, bytes: new Uint8Array(await readBytes(path)) };
  } catch (error) {
    return problemOf(path, error);
  }
}

/** A `Stop` names the path and says what is wrong; any other error comes from reading. */
function problemOf(path: string, error: unknown): Item {
  if (error instanceof Stop) return { name: path, problem: error.message, unreadable: error.code === EXIT.unreadable };
  return { name: path, problem: `${path}: cannot be read (${reason(error)})`, unreadable: true };
}
