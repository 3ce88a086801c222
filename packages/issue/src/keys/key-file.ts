import { gcm } from "@noble/ciphers/aes.js";
import { scryptAsync } from "@noble/hashes/scrypt.js";
import { bytesToHex, hexToBytes, randomBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonical } from "../statement/canonical.ts";
import { StatementFault } from "../statement/lines.ts";
import { readStrict } from "../statement/strict.ts";

const FORMAT = "good-grounds-key";

/** Work of scrypt as a power of two: 128 MB and about a second on a phone. */
const USUAL_COST = 17;
/** More than this would only be asked by a file that wants to stop the device. */
const MOST_COST = 20;

/** What everybody may know of a key. */
export interface PublicKey {
  readonly key: string;
  readonly person: string;
  readonly device: string;
  /** When it was made: UTC, to the second. */
  readonly made: string;
  /** The self-issued certificate for the signature on documents, DER as hexadecimal. */
  readonly certificate: string;
}

/** What nobody else may know: both private keys. */
export interface Secrets {
  /** The secret of the Ed25519 key, 32 bytes. */
  readonly statement: Uint8Array;
  /** The private key of the certificate as PKCS #8. */
  readonly document: Uint8Array;
}

/** Writes a key with its secrets encrypted: scrypt of the passphrase, then AES-256-GCM over secrets and public part. */
export async function writeKeyFile(
  key: PublicKey,
  secrets: Secrets,
  passphrase: string,
  cost = USUAL_COST,
): Promise<string> {
  const salt = randomBytes(16);
  const nonce = randomBytes(12);
  const open = { format: FORMAT, version: 1, ...key, cost, salt: bytesToHex(salt), nonce: bytesToHex(nonce) };
  const inner = canonical({ statement: bytesToHex(secrets.statement), document: bytesToHex(secrets.document) });
  const cipher = gcm(await stretched(passphrase, salt, cost), nonce, utf8ToBytes(canonical(open)));
  return `${canonical({ ...open, sealed: bytesToHex(cipher.encrypt(utf8ToBytes(inner))) })}\n`;
}

/** The public part of a key alone, for the register of the firm: nothing in it is secret. */
export function writePublicKey(key: PublicKey): string {
  return `${canonical({ format: FORMAT, version: 1, ...key })}\n`;
}

/** The public part of a key file, or of what {@link writePublicKey} wrote. Throws {@link StatementFault} where it is none. */
export function readPublicKey(text: string): PublicKey {
  const value = readStrict(text);
  const hasSecrets = typeof value === "object" && value !== null && "sealed" in value;
  const { key, person, device, made, certificate } = hasSecrets ? fileOf(text) : publicPartOf(value);
  return { key, person, device, made, certificate };
}

/** Opens a key file. Throws {@link StatementFault} where it is none, was changed, or the passphrase is another. */
export async function openKeyFile(text: string, passphrase: string): Promise<Secrets> {
  const { sealed, ...open } = fileOf(text);
  const derived = await stretched(passphrase, hexToBytes(open.salt), open.cost);
  let inner: Uint8Array;
  try {
    inner = gcm(derived, hexToBytes(open.nonce), utf8ToBytes(canonical(open))).decrypt(hexToBytes(sealed));
  } catch {
    throw new StatementFault("the key does not open: the passphrase is another, or the file was changed");
  }
  const { statement, document } = JSON.parse(new TextDecoder().decode(inner)) as Record<
    "statement" | "document",
    string
  >;
  return { statement: hexToBytes(statement), document: hexToBytes(document) };
}

interface KeyFile extends PublicKey {
  readonly format: string;
  readonly version: number;
  readonly cost: number;
  readonly salt: string;
  readonly nonce: string;
  readonly sealed: string;
}

function publicPartOf(value: unknown): Partial<KeyFile> & PublicKey {
  const file = value as Partial<KeyFile> | null;
  if (file === null || typeof file !== "object" || file.format !== FORMAT || file.version !== 1)
    throw new StatementFault(`no key: "format" should be "${FORMAT}" and "version" 1`);
  for (const name of ["key", "person", "device", "made", "certificate"] as const)
    if (typeof file[name] !== "string") throw new StatementFault(`the key has no ${name}`);
  holdHex(file, ["key", "certificate"]);
  return file as PublicKey;
}

function holdHex(file: Partial<KeyFile>, names: readonly ("key" | "certificate" | "salt" | "nonce" | "sealed")[]) {
  for (const name of names)
    if (!/^([0-9a-f]{2})+$/.test(file[name] ?? ""))
      throw new StatementFault(`${name} of the key: expected bytes in hexadecimal`);
}

function fileOf(text: string): KeyFile {
  const file = publicPartOf(readStrict(text));
  if (file.sealed === undefined)
    throw new StatementFault("the public part of a key alone: it signs nothing. Name the key file itself");
  for (const name of ["salt", "nonce", "sealed"] as const)
    if (typeof file[name] !== "string") throw new StatementFault(`the key has no ${name}`);
  holdHex(file, ["salt", "nonce", "sealed"]);
  const { cost } = file;
  if (typeof cost !== "number" || !Number.isInteger(cost) || cost < 10 || cost > MOST_COST)
    throw new StatementFault(`cost of the key: found ${String(cost)}, expected a whole number from 10 to ${MOST_COST}`);
  return file as KeyFile;
}

function stretched(passphrase: string, salt: Uint8Array, cost: number): Promise<Uint8Array> {
  const words = utf8ToBytes(passphrase.normalize("NFKC"));
  return scryptAsync(words, salt, { N: 2 ** cost, r: 8, p: 1, dkLen: 32, maxmem: 2 ** (MOST_COST + 11) });
}
