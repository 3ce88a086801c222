import { concatBytes, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";

/** What a line of a statement may hold. Figures are decimals as text, so that no reader rounds them. */
export const KINDS = ["text", "decimal", "bytes", "moment"] as const;
type Kind = (typeof KINDS)[number];

/** One line of a statement: its name, the kind of its value, and the value as text (bytes as hexadecimal). */
export type Line = readonly [name: string, kind: Kind, value: string];

/** What a statement cannot hold, with the line and what was expected. */
export class StatementFault extends Error {}

const SHAPE: Readonly<Record<Exclude<Kind, "text">, readonly [RegExp, string]>> = {
  decimal: [/^(0|-?[1-9]\d{0,30}|-?(0|[1-9]\d{0,30})\.\d{1,30})$/, "a decimal such as 12 or 0.35"],
  bytes: [/^([0-9a-f]{2})+$/, "bytes as pairs of the digits 0 to 9 and a to f"],
  moment: [/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/, "a moment such as 2026-10-07T08:15:00Z"],
};

/** Stands in front of the bytes, so that no other signature can be taken for one of a statement. */
const MARK = "good-grounds-statement-1\n";

/**
 * The bytes that are signed: the mark, the number of lines, and for each line name, kind and value, each with its length in
 * front. No two statements share their bytes. Throws {@link StatementFault} where a value is not of its kind.
 */
export function statementBytes(lines: readonly Line[]): Uint8Array {
  return concatBytes(utf8ToBytes(MARK), size(lines.length), ...lines.map(lineBytes));
}

function lineBytes([name, kind, value]: Line, i: number): Uint8Array {
  const shape = kind === "text" ? undefined : SHAPE[kind];
  if (shape !== undefined && !shape[0].test(value))
    throw new StatementFault(
      `line ${i + 1} of the statement, ${name}: found ${JSON.stringify(value)}, expected ${shape[1]}`,
    );
  if (!isWhole(name) || !isWhole(value))
    throw new StatementFault(`line ${i + 1} of the statement: half of a character, where whole text was expected`);
  const content = kind === "bytes" ? hexToBytes(value) : utf8ToBytes(value);
  return concatBytes(sized(utf8ToBytes(name)), sized(utf8ToBytes(kind)), sized(content));
}

function sized(bytes: Uint8Array): Uint8Array {
  return concatBytes(size(bytes.length), bytes);
}

/** A length as four bytes, the greatest first. */
function size(length: number): Uint8Array {
  const bytes = new Uint8Array(4);
  new DataView(bytes.buffer).setUint32(0, length);
  return bytes;
}

/** Whether text has no half of a pair standing alone: two programs would write such text as different bytes. */
export function isWhole(text: string): boolean {
  return !/\p{Surrogate}/u.test(text);
}
