import { readRegister } from "../keys/register.ts";
import { readRecord } from "../statement/record.ts";
import { hashOf } from "../statement/statement.ts";
import type { Given } from "../verify/verified.ts";
import { readIssued } from "./issued.ts";

/**
 * Tells what a file is: an issued document, a record of an issue, a register of keys, an inspection file, or a photograph.
 * `release` is that of this program. Throws `StatementFault` where a record or a register cannot be read.
 */
export async function readGiven(name: string, bytes: Uint8Array, release: string): Promise<Given> {
  const start = new TextDecoder("latin1").decode(bytes.subarray(0, 5));
  if (start === "%PDF-" || name.toLowerCase().endsWith(".pdf"))
    return { kind: "document", name, issued: await readIssued(bytes, release) };
  if (!/^\s*\{/.test(start)) return { kind: "photograph", name, hash: hashOf(bytes) };
  const text = new TextDecoder("utf-8").decode(bytes);
  if (text.includes('"good-grounds-issue"')) return { kind: "record", name, record: readRecord(bytes) };
  if (text.includes('"good-grounds-keys"')) return { kind: "register", name, register: readRegister(text) };
  return { kind: "evidence", name, hash: hashOf(bytes) };
}
