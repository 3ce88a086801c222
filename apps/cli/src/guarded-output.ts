import { type BigIntStats, constants } from "node:fs";
import { lstat, open, realpath, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { EXIT, Stop } from "./host.ts";
import { reason } from "./reason-of.ts";

/** A kind of document that a command writes, known by what every one of them begins with. */
export interface OutputKind {
  /** Null where others write in it: such a file is never replaced. */
  readonly begins: Uint8Array | null;
  /** What it is called: "PDF". */
  readonly name: string;
  /** What the command makes. */
  readonly made: string;
}

export const PDF: OutputKind = Object.freeze({ begins: Buffer.from("%PDF-"), name: "PDF", made: "report" });
export const HTML: OutputKind = Object.freeze({
  begins: Buffer.from('<!DOCTYPE html>\n<html lang="en-GB">'),
  name: "page",
  made: "document",
});
export const CSV: OutputKind = Object.freeze({ begins: null, name: "table", made: "list of works" });
export const XLSX: OutputKind = Object.freeze({ begins: null, name: "workbook", made: "list of works" });
export const CALENDAR: OutputKind = Object.freeze({
  begins: Buffer.from("BEGIN:VCALENDAR"),
  name: "calendar",
  made: "calendar",
});

/**
 * The file to write a report to, or a document of another kind, with links followed. `given` is every word of the command line: none of the files they
 * name may be the target, by whatever name, link or spelling it is meant. What stands there already may only be an
 * earlier one of its kind: anything else is somebody's work and is refused, with what to do.
 */
export async function guardedOutput(out: string, given: readonly string[], kind = PDF): Promise<string> {
  const target = await followed(out);
  const there = await found(target);
  if (there === undefined) {
    // What is not there yet may still be named twice, such as by two links to one place.
    for (const name of given)
      if ((await followed(name).catch(() => undefined)) === target) throw isInput(out, name, kind);
    return target;
  }
  if (there.isDirectory()) throw new Stop(EXIT.input, `${target}: is a folder. Name the file to write.`);
  if (!there.isFile()) throw new Stop(EXIT.input, `${target}: is a device or a pipe, no file. Name the file to write.`);
  for (const name of given) {
    const input = await found(name);
    if (input !== undefined && input.dev === there.dev && input.ino === there.ino) throw isInput(out, name, kind);
  }
  if (kind.begins === null)
    throw new Stop(
      EXIT.input,
      `${target}: a file stands there, and somebody may have written in it, so that it is not replaced. Name another file for the ${kind.made}, or move that one away first.`,
    );
  if (!(await isOfKind(target, kind.begins, kind.made)))
    throw new Stop(
      EXIT.input,
      `${target}: a file that is no ${kind.name} stands there and is not replaced. Name another file for the ${kind.made}, or move that one away first.`,
    );
  return target;
}

function isInput(out: string, name: string, { made }: OutputKind): Stop {
  const as = out === name ? "" : ` as ${name}`;
  return new Stop(
    EXIT.input,
    `${out}: this command reads that file${as}, and it would be lost. Name another file for the ${made}.`,
  );
}

/** Where a name leads. A file that is not there yet is placed in the folder its name leads to. */
async function followed(name: string): Promise<string> {
  const real = await realpath(name).catch(() => undefined);
  if (real !== undefined) return real;
  if ((await lstat(name).catch(() => undefined))?.isSymbolicLink() === true)
    throw new Stop(EXIT.input, `${name}: is a link that leads to no file. Name the file to write.`);
  const path = resolve(name);
  return join(await realpath(dirname(path)).catch(() => dirname(path)), basename(path));
}

/** Device and number of a file as whole numbers: rounded ones could be those of another. */
function found(name: string): Promise<BigIntStats | undefined> {
  return stat(name, { bigint: true }).catch(() => undefined);
}

async function isOfKind(path: string, begins: Uint8Array, made: string): Promise<boolean> {
  try {
    const file = await open(path, constants.O_RDONLY);
    try {
      const start = Buffer.alloc(begins.length);
      await file.read(start, 0, begins.length, 0);
      return start.equals(begins);
    } finally {
      await file.close();
    }
  } catch (error) {
    throw new Stop(
      EXIT.input,
      `${path}: a file stands there that cannot be read (${reason(error)}), so that it may be no ${made}. Name another file.`,
    );
  }
}
