import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, randomBytes } from "@noble/hashes/utils.js";
import { selfIssued } from "../pdf/certificate.ts";
import { writeKeyFile } from "./key-file.ts";

/** Makes a key for one person on one device, with a certificate it issues to itself, as an encrypted key file. */
export async function newKey(
  { person, device, made }: { readonly person: string; readonly device: string; readonly made: string },
  passphrase: string,
  cost?: number,
): Promise<string> {
  const statement = randomBytes(32);
  const { certificate, secret } = await selfIssued(person, device, new Date(made));
  const key = bytesToHex(ed25519.getPublicKey(statement));
  const open = { key, person, device, made, certificate: bytesToHex(certificate) };
  return writeKeyFile(open, { statement, document: secret }, passphrase, cost);
}

/** A new secret for a paper root. It is printed once and kept nowhere. */
export function newRoot(): Uint8Array {
  return randomBytes(32);
}
