import { ed25519 } from "@noble/curves/ed25519.js";
import { hexToBytes } from "@noble/hashes/utils.js";

/** Whether a signature is that of an Ed25519 key, under the strict rules of RFC 8032. */
export function isSigned(message: Uint8Array, signature: unknown, key: string): boolean {
  if (typeof signature !== "string" || !/^[0-9a-f]{128}$/.test(signature) || !/^[0-9a-f]{64}$/.test(key)) return false;
  try {
    return ed25519.verify(hexToBytes(signature), message, hexToBytes(key), { zip215: false });
  } catch {
    return false;
  }
}
