import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, hexToBytes } from "@noble/hashes/utils.js";
import { StatementFault } from "../statement/lines.ts";
import { hashOf } from "../statement/statement.ts";

/** Groups of eight digits: eight of the secret and one to find slips of the pen. */
const GROUPS = 9;

/** The words on paper for a root: what signs the register of a firm and is stored nowhere else. */
export function paperOf(secret: Uint8Array): string {
  const digits = bytesToHex(secret) + checkOf(secret);
  return (digits.match(/.{8}/g) ?? []).join(" ");
}

/** The secret of a root as typed from paper. Throws {@link StatementFault} where a digit is wrong or missing. */
export function rootFromPaper(typed: string): Uint8Array {
  const digits = typed.toLowerCase().replace(/[\s-]/g, "");
  if (!/^[0-9a-f]*$/.test(digits)) throw new StatementFault("the paper root has the digits 0 to 9 and a to f only");
  if (digits.length !== GROUPS * 8)
    throw new StatementFault(`the paper root: found ${digits.length} digits, expected ${GROUPS} groups of 8`);
  const secret = hexToBytes(digits.slice(0, 64));
  if (checkOf(secret) !== digits.slice(64))
    throw new StatementFault(
      "the paper root: the last group does not fit the others. Compare each digit with the paper",
    );
  return secret;
}

/** The public half of a root, by which a register is known. */
export function rootKey(secret: Uint8Array): string {
  return bytesToHex(ed25519.getPublicKey(secret));
}

function checkOf(secret: Uint8Array): string {
  return hashOf(`good-grounds-root-1\n${bytesToHex(secret)}`).slice(0, 8);
}
