import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { forOthers } from "./for-others.ts";
import { printInspection } from "./print.ts";
import type { InspectionFile } from "./schema/file.ts";

/**
 * How a signature stands to the content of its file: `signed` for just this content; `changed`: it was given for another;
 * `unbound`: it says of no content that it was given for it, so nobody can tell. Only the first counts as signed.
 */
export type SignatureStanding = "signed" | "changed" | "unbound";

/**
 * SHA-256 of everything that is signed, as 64 digits: the printed inspection without its signatures, and without the
 * notes to one's own figures, which no reader of the report gets. Any change gives another.
 */
export function contentHash(file: InspectionFile): string {
  return bytesToHex(sha256(utf8ToBytes(printInspection({ ...forOthers(file), signatures: [] }))));
}

/** How each signature of a file stands, in their order. */
export function signatureStandings(file: InspectionFile): readonly SignatureStanding[] {
  if (file.signatures.every(({ content }) => content === undefined)) return file.signatures.map(() => "unbound");
  const hash = contentHash(file);
  return file.signatures.map(({ content }) => standingOf(content, hash));
}

/** How a signature given for the content of one hash stands to the content of another. */
export function standingOf(content: string | undefined, hash: string | undefined): SignatureStanding {
  if (content === undefined) return "unbound";
  return content === hash ? "signed" : "changed";
}
