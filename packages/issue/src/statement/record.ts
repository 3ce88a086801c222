import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { type Register, readRegister } from "../keys/register.ts";
import { canonical } from "./canonical.ts";
import { KINDS, type Line, StatementFault, statementBytes } from "./lines.ts";
import { readStatement } from "./read-statement.ts";
import { isSigned } from "./signed.ts";
import { type Statement, statementHash, statementLines } from "./statement.ts";
import { readCanonical } from "./strict.ts";

const FORMAT = "good-grounds-issue";
const VERSION = 1;

/** A statement with its signature and the register of keys of the firm, as attached to the document. */
export interface IssueRecord {
  readonly statement: Statement;
  /** The hash by which other statements name this one. */
  readonly hash: string;
  /** Whether the signature is that of the key the statement names, over its bytes. */
  readonly signed: boolean;
  readonly register: Register | undefined;
}

/** Signs a statement with the secret of an Ed25519 key and writes the record. */
export function writeRecord(statement: Statement, secret: Uint8Array, register: string | undefined): Uint8Array {
  const lines = statementLines(statement);
  const signature = bytesToHex(ed25519.sign(statementBytes(lines), secret));
  const keys = register === undefined ? {} : { register };
  return utf8ToBytes(`${canonical({ format: FORMAT, version: VERSION, statement: lines, signature, ...keys })}\n`);
}

/** Reads a record. Throws {@link StatementFault} where it is none. A signature that does not fit is told by `signed`. */
export function readRecord(bytes: Uint8Array): IssueRecord {
  const text = textOf(bytes);
  const record = readCanonical(text) as Record<string, unknown> | null;
  if (record === null || typeof record !== "object" || record.format !== FORMAT)
    throw new StatementFault(`no record of an issue: "format" should be "${FORMAT}"`);
  if (record.version !== VERSION)
    throw new StatementFault(`a record of version ${JSON.stringify(record.version)}, where ${VERSION} was expected`);
  const unknown = Object.keys(record).find(
    (name) => !["format", "version", "statement", "signature", "register"].includes(name),
  );
  if (unknown !== undefined) throw new StatementFault(`a record of an issue has no member ${JSON.stringify(unknown)}`);
  const lines = linesOf(record.statement);
  const statement = readStatement(lines);
  return {
    statement,
    hash: statementHash(lines),
    signed: isSigned(statementBytes(lines), record.signature, statement.key),
    register: typeof record.register === "string" ? readRegister(record.register) : undefined,
  };
}

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new StatementFault("not UTF-8 text, where a record of an issue was expected");
  }
}

function linesOf(value: unknown): readonly Line[] {
  const isLine = (line: unknown): line is Line =>
    Array.isArray(line) &&
    line.length === 3 &&
    line.every((part) => typeof part === "string") &&
    KINDS.some((kind) => kind === line[1]);
  if (!Array.isArray(value) || !value.every(isLine))
    throw new StatementFault('"statement" should be lines of name, kind and value');
  return value;
}
