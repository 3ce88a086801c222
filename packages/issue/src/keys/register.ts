import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonical } from "../statement/canonical.ts";
import { StatementFault } from "../statement/lines.ts";
import { isSigned } from "../statement/signed.ts";
import { hashOf } from "../statement/statement.ts";
import { readCanonical } from "../statement/strict.ts";
import { rootKey } from "./paper-root.ts";

const FORMAT = "good-grounds-keys";
const MARK = "good-grounds-keys-1\n";

/** How a key ended. Only what a thief could sign is in doubt afterwards; what was signed before stands. */
export const ENDINGS = ["retired", "lost", "stolen"] as const;
export type Ending = (typeof ENDINGS)[number];

/** A key of one person on one device. Moments are UTC, to the second. */
export interface RegisteredKey {
  readonly key: string;
  readonly person: string;
  readonly device: string;
  readonly added: string;
  readonly ended?: { readonly as: Ending; readonly since: string };
}

/** A firm's list of keys under its paper root. A new one replaces the one before; nothing is taken out of it. */
export interface Register {
  /** Public half of the paper root. */
  readonly root: string;
  /** 1 for the first, one more each time. */
  readonly number: number;
  /** The register before it, by the hash of its text. */
  readonly previous?: string;
  readonly keys: readonly RegisteredKey[];
  /** Whether the root signed it. */
  readonly signed: boolean;
  /** As written. */
  readonly text: string;
}

/** Writes the next register. Throws {@link StatementFault} where the root is another, or a key of the old one is missing or changed. */
export function writeRegister(keys: readonly RegisteredKey[], root: Uint8Array, before?: Register): string {
  if (before !== undefined) holdAgainst(keys, rootKey(root), before);
  const body = {
    format: FORMAT,
    version: 1,
    root: rootKey(root),
    number: (before?.number ?? 0) + 1,
    ...(before === undefined ? {} : { previous: hashOf(before.text) }),
    keys,
  };
  return canonical({ ...body, signature: bytesToHex(ed25519.sign(signedBytes(body), root)) });
}

function holdAgainst(keys: readonly RegisteredKey[], root: string, before: Register): void {
  if (!before.signed)
    throw new StatementFault("the register was changed since its root signed it: nothing is added to it");
  if (before.root !== root) throw new StatementFault("the register stands under another paper root than the one typed");
  for (const old of before.keys) {
    const now = keys.find(({ key }) => key === old.key);
    const { ended: _, ...wasSaid } = old;
    const { ended, ...isSaid } = now ?? { ended: undefined };
    if (
      canonical(wasSaid) !== canonical(isSaid) ||
      (old.ended !== undefined && canonical(old.ended) !== canonical(ended ?? null))
    )
      throw new StatementFault(`key ${old.key.slice(0, 16)} is missing or changed: a register only grows`);
  }
}

/** Reads a register. Throws {@link StatementFault} where it is none; a signature that does not fit is told by `signed`. */
export function readRegister(text: string): Register {
  const value = readCanonical(text) as Record<string, unknown> | null;
  if (value === null || typeof value !== "object" || value.format !== FORMAT || value.version !== 1)
    throw new StatementFault(`no register of keys: "format" should be "${FORMAT}" and "version" 1`);
  const { signature, ...body } = value;
  const { root, number, previous, keys } = body;
  if (typeof root !== "string" || typeof number !== "number" || !Array.isArray(keys) || !keys.every(isKey))
    throw new StatementFault(
      "a register has a root, a number and keys, each with person, device and when it was added",
    );
  return {
    root,
    number,
    keys,
    ...(typeof previous === "string" ? { previous } : {}),
    signed: isSigned(signedBytes(body), signature, root),
    text: text.replace(/\n$/, ""),
  };
}

function signedBytes(body: object): Uint8Array {
  return utf8ToBytes(MARK + canonical(body));
}

const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/;

function isKey(value: unknown): value is RegisteredKey {
  if (typeof value !== "object" || value === null) return false;
  const { key, person, device, added, ended } = value as Record<string, unknown>;
  return (
    typeof key === "string" &&
    /^[0-9a-f]{64}$/.test(key) &&
    typeof person === "string" &&
    typeof device === "string" &&
    typeof added === "string" &&
    MOMENT.test(added) &&
    (ended === undefined || isEnding(ended))
  );
}

function isEnding(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return false;
  const { as, since } = value as Record<string, unknown>;
  return ENDINGS.some((one) => one === as) && typeof since === "string" && MOMENT.test(since);
}
