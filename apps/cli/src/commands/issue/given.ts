import { hashOf, type IssueRecord, type Register, readRecord, readRegister } from "@good-grounds/issue";
import { type Issued, readIssued } from "@good-grounds/issue/pdf";
import { readBytes, readText } from "../../read.ts";
import { VERSION } from "../../version.ts";
import { ofFile } from "./faults.ts";

/** One file handed in, by what it is. */
export type Given =
  | { readonly kind: "document"; readonly path: string; readonly issued: Issued }
  | { readonly kind: "record"; readonly path: string; readonly record: IssueRecord }
  | { readonly kind: "evidence" | "photograph"; readonly path: string; readonly hash: string };

/** Reads a file and tells what it is: an issued document, a record of an issue, an inspection file, or a photograph. */
export async function givenAt(path: string): Promise<Given> {
  const bytes = await readBytes(path);
  if (bytes.subarray(0, 5).toString("latin1") === "%PDF-" || path.toLowerCase().endsWith(".pdf"))
    return { kind: "document", path, issued: await readIssued(new Uint8Array(bytes), VERSION) };
  const isJson = /^[\s\uFEFF]*\{/.test(bytes.subarray(0, 200).toString("utf8"));
  if (!isJson) return { kind: "photograph", path, hash: hashOf(new Uint8Array(bytes)) };
  if (bytes.includes('"good-grounds-issue"'))
    return { kind: "record", path, record: await ofFile(path, () => readRecord(new Uint8Array(bytes))) };
  return { kind: "evidence", path, hash: hashOf(new Uint8Array(bytes)) };
}

/** The register of a firm from a file. */
export async function registerOf(path: string | undefined): Promise<Register | undefined> {
  if (path === undefined) return undefined;
  const text = await readText(path);
  return ofFile(path, () => readRegister(text));
}
