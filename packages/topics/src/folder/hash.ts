import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, concatBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import type { Text } from "../texts.js";

/** SHA-256 over the names and bytes of texts in the order of their names, each with its length in front; hexadecimal. */
export function hashOf(texts: readonly Text[]): string {
  const pieces = [...texts]
    .sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0))
    .flatMap(({ file, text }) => [withLength(utf8ToBytes(file)), withLength(utf8ToBytes(text))]);
  return bytesToHex(sha256(concatBytes(...pieces)));
}

function withLength(bytes: Uint8Array): Uint8Array {
  return concatBytes(utf8ToBytes(`${bytes.length}:`), bytes);
}

/** The release of a set of texts: the beginning of their hash. */
export function releaseOf(texts: readonly Text[]): string {
  return hashOf(texts).slice(0, 12);
}
