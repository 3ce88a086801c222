import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { folderWords, printable, wrapped } from "@good-grounds/report";
import { OWN_TOPICS, type Topics } from "@good-grounds/topics";
import { type Folder, faultText, ownTexts, readFolder, type Text, type TextFault } from "@good-grounds/topics/texts";
import { EXIT, Stop } from "./host.ts";
import { decode } from "./read.ts";
import { reason } from "./reason-of.ts";

/** More texts than a firm ever writes; beyond them the folder named is another one. */
const MOST_TEXTS = 2000;
const MOST_BYTES = 1_000_000;

const READ = new Map<string, Topics>();

/**
 * The topics of this program, or with those and the standing views of a firm's own folder. Stops with everything that is
 * wrong in it; it is read once.
 */
export function topicsIn(folder: string | undefined): Topics {
  if (folder === undefined) return OWN_TOPICS;
  const known = READ.get(folder);
  if (known !== undefined) return known;
  const texts = textsIn(folder);
  const { folder: read, faults } = readFolder(texts, ownTexts());
  if (read === undefined || faults.length > 0)
    throw new Stop(EXIT.input, `${faultsText(folder, faults, texts)}\n${folder}: nothing of it was used.`);
  READ.set(folder, read.topics);
  return read.topics;
}

/** A folder as read, with its texts, or its faults. */
export function folderIn(path: string): {
  readonly texts: readonly Text[];
  readonly folder?: Folder;
  readonly faults: readonly TextFault[];
} {
  const texts = textsIn(path);
  return { texts, ...readFolder(texts, ownTexts()) };
}

/** Every text of a folder of topics, by its path in there, in the order of the paths. Other files are left alone. */
export function textsIn(folder: string): readonly Text[] {
  let names: readonly string[];
  try {
    if (!statSync(folder).isDirectory())
      throw new Stop(EXIT.unreadable, `${folder}: a file, where a folder of topics was expected.`);
    names = readdirSync(folder, { recursive: true, encoding: "utf8" });
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw new Stop(EXIT.unreadable, `${folder}: cannot be read (${reason(error)}). Name a folder of topics.`);
  }
  const files = names
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => /\.topics?$/.test(name))
    .sort();
  if (files.length > MOST_TEXTS)
    throw new Stop(EXIT.input, `${folder}: ${files.length} texts, where at most ${MOST_TEXTS} were expected.`);
  return files.map((file) => ({ file, text: textOf(join(folder, file)) }));
}

function textOf(path: string): string {
  try {
    const { size } = statSync(path);
    if (size > MOST_BYTES)
      throw new Stop(EXIT.input, `${path}: ${size} bytes, where at most ${MOST_BYTES} were expected.`);
    const bytes = readFileSync(path);
    const text = decode(bytes, path, "a text of topics");
    // The mark in front belongs to the bytes that are hashed; reading leaves it out.
    return bytes[0] === 0xef && !text.startsWith("\uFEFF") ? `\uFEFF${text}` : text;
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw new Stop(EXIT.unreadable, `${path}: cannot be read (${reason(error)}). Check that you may read it.`);
  }
}

/** Faults as lines, each under its place in the folder. */
export function faultsText(folder: string, faults: readonly TextFault[], texts: readonly Text[]): string {
  const textIn = (file: string) => texts.find((one) => one.file === file)?.text ?? "";
  return faults
    .map((fault) => faultText({ ...fault, file: join(folder, fault.file) }, textIn(fault.file)))
    .map((text) => text.split("\n").map(printable).join("\n"))
    .join("\n\n");
}

/** The folder in JSON output; nothing where there is none. */
export function folderJson({ folder }: Topics): { readonly topics?: object } {
  return folder === undefined ? {} : { topics: folder };
}

/** The folder in terminal output; nothing where there is none. */
export function folderLines({ folder }: Topics, width: number): readonly string[] {
  return folder === undefined ? [] : [...wrapped(folderWords(folder), width), ""];
}
