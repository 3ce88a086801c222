import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { type Line, statementBytes } from "./lines.ts";

/** SHA-256 as 64 digits. */
export function hashOf(content: Uint8Array | string): string {
  return bytesToHex(sha256(typeof content === "string" ? utf8ToBytes(content) : content));
}

/** Where a report can be laid out. */
export const LAYOUTS = ["command", "device"] as const;
export type Layout = (typeof LAYOUTS)[number];

/** What one issue of a report says of itself. Hashes are SHA-256 as 64 digits. */
export interface Statement {
  /** The number of the inspection file. */
  readonly report: string;
  /** 1 for the first issue, one more each time. */
  readonly number: number;
  /** The statement of the issue it replaces, by hash. */
  readonly replaces?: string | undefined;
  /** The statement of what the firm issued before it, by hash. */
  readonly previous?: string | undefined;
  /** The attached inspection file. */
  readonly evidence: string;
  /** The document as it was laid out, before statement and signature were added. */
  readonly pages: string;
  readonly pagesLength: number;
  readonly photographs: readonly string[];
  /** Inspections the report was held against. */
  readonly earlier: readonly string[];
  /** The firm's own folder of topics, where one was used. */
  readonly topics?: string | undefined;
  /** The release of this program that made the pages. */
  readonly release: string;
  /** Which of its layout engines made them: that of the command or that of the app on a device. Their bytes differ. */
  readonly layout: Layout;
  readonly outcome: string;
  /** Signatures of the inspection file: who, as what, when; the strokes by hash where one was drawn. */
  readonly signatures: readonly { readonly words: string; readonly drawn?: string | undefined }[];
  /** Open points that decide, in words as whoever issues it read them, and the reason for issuing all the same, in order. */
  readonly reasons: readonly { readonly point: string; readonly words: string }[];
  /** UTC, to the second. */
  readonly at: string;
  /** Whose clock: that of this device, or what stands for it. */
  readonly clock: string;
  /** Whether a time authority was asked. */
  readonly timeAuthority: boolean;
  /** Public key of who signed the statement. */
  readonly key: string;
  /** The certificates of the signature on the document. */
  readonly certificate: string;
}

/** The statement as plain lines, in a fixed order. */
export function statementLines(s: Statement): readonly Line[] {
  return [
    ["report", "text", s.report],
    ["number", "decimal", String(s.number)],
    s.replaces === undefined ? ["replaces", "text", "nothing"] : ["replaces", "bytes", s.replaces],
    s.previous === undefined ? ["previous", "text", "not stated"] : ["previous", "bytes", s.previous],
    ["evidence", "bytes", s.evidence],
    ["pages", "bytes", s.pages],
    ["pages-length", "decimal", String(s.pagesLength)],
    ...s.photographs.map((hash): Line => ["photograph", "bytes", hash]),
    ...s.earlier.map((hash): Line => ["earlier", "bytes", hash]),
    s.topics === undefined ? ["topics", "text", "those of the release"] : ["topics", "bytes", s.topics],
    ["release", "text", s.release],
    ["layout", "text", s.layout],
    ["outcome", "text", s.outcome],
    ...s.signatures.flatMap(({ words, drawn }): Line[] => [
      ["signature", "text", words],
      drawn === undefined ? ["strokes", "text", "none drawn"] : ["strokes", "bytes", drawn],
    ]),
    ...s.reasons.flatMap(({ point, words }): Line[] => [
      ["open-point", "text", point],
      ["reason", "text", words],
    ]),
    ["at", "moment", s.at],
    ["clock", "text", s.clock],
    ["time-authority", "text", s.timeAuthority ? "asked" : "not asked"],
    ["key", "bytes", s.key],
    ["certificate", "bytes", s.certificate],
  ];
}

/** The hash by which other statements name this one. */
export function statementHash(lines: readonly Line[]): string {
  return hashOf(statementBytes(lines));
}
