import { readFile, writeFile } from "node:fs/promises";
import {
  ENDINGS,
  paperOf,
  type Register,
  type RegisteredKey,
  readPublicKey,
  readRegister,
  rootFromPaper,
  rootKey,
  writeRegister,
} from "@good-grounds/issue";
import { newKey, newRoot } from "@good-grounds/issue/pdf";
import { EXIT, type ExitCode, type Host, Stop } from "../../host.ts";
import { readText } from "../../read.ts";
import { reason } from "../../reason-of.ts";
import { ofFile } from "./faults.ts";
import { momentNow } from "./moment.ts";
import { secretLine } from "./secret-line.ts";
import { writtenOnce } from "./written-once.ts";

interface KeysOptions {
  readonly as?: string;
  readonly device?: string;
  readonly key?: string;
  readonly out?: string;
  readonly person?: string;
  readonly register?: string;
  readonly since?: string;
}

/** Letters of a passphrase below which guessing needs no patience. */
const FEWEST = 12;

/** `goodgrounds keys`: makes keys and roots, and keeps the register of a firm. */
export async function keysCommand(rest: readonly string[], options: KeysOptions, host: Host): Promise<ExitCode> {
  const [action, ...words] = rest;
  if (action === "new" && words.length === 0) return makeKey(options, host);
  if (action === "root" && words.length === 0) return makeRoot(host);
  if (action === "add" && words.length === 0) return addKey(options, host);
  if (action === "end" && words.length === 1) return endKey(words[0] ?? "", options, host);
  throw new Stop(EXIT.input, "keys: say new, root, add or end. `goodgrounds --help` shows what each takes.");
}

async function makeKey({ person, device, out }: KeysOptions, host: Host): Promise<ExitCode> {
  const target = needed(out, "keys new", "--out FILE");
  const named = {
    person: needed(person, "keys new", "--person NAME"),
    device: needed(device, "keys new", "--device NAME"),
  };
  const passphrase = await secretLine(host, "GOODGROUNDS_PASSPHRASE", "A new passphrase for the key");
  if (passphrase.length < FEWEST)
    throw new Stop(
      EXIT.input,
      `keys new: a passphrase of ${passphrase.length} letters, where at least ${FEWEST} were expected. Four words that do not belong together do well.`,
    );
  const text = await newKey({ ...named, made: momentNow() }, passphrase);
  await writtenOnce(target, text, "Name another file.");
  host.stdout.write(`${target}\n${readPublicKey(text).key}\n`);
  return EXIT.done;
}

function makeRoot(host: Host): ExitCode {
  const secret = newRoot();
  host.stdout.write(
    `Paper root. Write it down or print it, lock it away, and keep no copy on a device:\n\n  ${paperOf(secret)}\n\nWhat others may know, and compare registers with:\n\n  ${rootKey(secret)}\n`,
  );
  return EXIT.done;
}

async function addKey({ key, register }: KeysOptions, host: Host): Promise<ExitCode> {
  const path = needed(register, "keys add", "--register FILE");
  const name = needed(key, "keys add", "--key FILE");
  const text = await readText(name);
  const { key: digits, person, device } = await ofFile(name, () => readPublicKey(text));
  const before = await registerAt(path);
  if (before?.keys.some((one) => one.key === digits) === true)
    throw new Stop(EXIT.input, `${name}: stands in the register already.`);
  return signed(path, [...(before?.keys ?? []), { key: digits, person, device, added: momentNow() }], before, host);
}

async function endKey(digits: string, { as, since, register }: KeysOptions, host: Host): Promise<ExitCode> {
  const path = needed(register, "keys end", "--register FILE");
  const before = await registerAt(path);
  const found = before?.keys.filter(({ key }) => digits.length >= 8 && key.startsWith(digits)) ?? [];
  const [key] = found;
  if (key === undefined || found.length > 1)
    throw new Stop(
      EXIT.input,
      `${path}: ${found.length} keys begin with ${JSON.stringify(digits)}, where one was expected. Give at least 8 digits.`,
    );
  const ending = ENDINGS.find((one) => one === as);
  if (ending === undefined)
    throw new Stop(EXIT.input, `keys end: say how it ended with --as ${ENDINGS.join(", --as ")}.`);
  const moment = needed(since, "keys end", "--since MOMENT");
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/.test(moment))
    throw new Stop(
      EXIT.input,
      `keys end: found --since ${JSON.stringify(moment)}, expected a moment such as 2026-10-07T08:15:00Z.`,
    );
  const keys = before?.keys.map((one) => (one === key ? { ...one, ended: { as: ending, since: moment } } : one)) ?? [];
  return signed(path, keys, before, host);
}

async function registerAt(path: string): Promise<Register | undefined> {
  try {
    const text = await readFile(path, "utf8");
    return await ofFile(path, () => readRegister(text));
  } catch (error) {
    if (reason(error) === "ENOENT") return undefined;
    throw error;
  }
}

async function signed(
  path: string,
  keys: readonly RegisteredKey[],
  before: Register | undefined,
  host: Host,
): Promise<ExitCode> {
  const typed = await secretLine(host, "GOODGROUNDS_ROOT", "The paper root, all nine groups");
  const text = await ofFile("paper root", () => writeRegister(keys, rootFromPaper(typed), before));
  // The one before stays beside it: a register says by hash which one it replaces.
  if (before !== undefined) await writtenOnce(`${path}.${before.number}`, `${before.text}\n`, "Move it away first.");
  await writeFile(path, `${text}\n`);
  host.stdout.write(`${path}\n`);
  return EXIT.done;
}

function needed(value: string | undefined, command: string, option: string): string {
  if (value === undefined || value === "") throw new Stop(EXIT.input, `${command}: ${option} is missing.`);
  return value;
}
