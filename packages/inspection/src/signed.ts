import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { forOthers } from "./for-others.ts";
import { asVersion2 } from "./migrations/as-version-2.ts";
import { printInspection } from "./print.ts";
import type { InspectionFile } from "./schema/file.ts";

/**
 * How a signature stands to the content of its file: `signed` for just this content; `changed`: it was given for another;
 * `unbound`: it says of no content that it was given for it, so nobody can tell. Only the first counts as signed.
 */
export type SignatureStanding = "signed" | "changed" | "unbound";

/**
 * SHA-256 of everything that is signed, as 64 digits: the inspection without its signatures, and without the notes to
 * one's own figures, which no reader of the report gets. Any change gives another; the order of members, of which
 * nothing is said by anybody, does not.
 */
export function contentHash(file: InspectionFile): string {
  return hashOfText(JSON.stringify(inOrder({ ...forOthers(file), signatures: [] })));
}

/** Every hash that a signature for this content may carry: today's first, then as earlier versions took it of the printed file. */
export function contentHashes(file: InspectionFile): readonly string[] {
  const older = asVersion2({ ...file, signatures: [] });
  return [
    contentHash(file),
    hashOfText(printInspection({ ...file, signatures: [] })),
    // A file of version 2 that was signed stays signed when it is opened and written again.
    ...(older === undefined ? [] : hashesOf(older)),
  ];
}

function hashesOf(older: object): readonly string[] {
  const { ownFigures: _, ...signed } = older as { readonly ownFigures?: unknown };
  return [hashOfText(JSON.stringify(inOrder(signed))), hashOfText(`${JSON.stringify(older, null, 2)}\n`)];
}

function hashOfText(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/** The same data with the members of every object in the order of their names, as RFC 8785 has them. */
function inOrder(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(inOrder);
  return Object.fromEntries(
    Object.entries(value)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([name, inner]) => [name, inOrder(inner)]),
  );
}

/** How each signature of a file stands, in their order. */
export function signatureStandings(file: InspectionFile): readonly SignatureStanding[] {
  if (file.signatures.every(({ content }) => content === undefined)) return file.signatures.map(() => "unbound");
  const hashes = contentHashes(file);
  return file.signatures.map(({ content }) => standingOf(content, hashes));
}

/** How a signature given for the content of one hash stands to the content that has these. */
export function standingOf(content: string | undefined, hashes: readonly string[]): SignatureStanding {
  if (content === undefined) return "unbound";
  return hashes.includes(content) ? "signed" : "changed";
}
