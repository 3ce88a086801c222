import type { FolderText } from "../engine/folder-view.ts";
import { bytesOf, membersOf } from "../hand-over/archive.ts";
import { FIRM } from "../words/firm.ts";

/** More texts than a firm ever writes, and more bytes than one ever has; as the command has them. */
const MOST_TEXTS = 2000;
const MOST_BYTES = 1_000_000;

/** What was chosen cannot be read as texts; the message says which and what to do. */
export class NotTexts extends Error {
  override name = "NotTexts";
}

/** A file that was chosen, by its path below what was chosen; without a folder in front where it was chosen alone. */
interface Chosen {
  readonly path: string;
  readonly size: number;
  readonly bytes: () => Promise<Uint8Array>;
}

/** The texts of a folder that a picker of folders gave. */
export async function textsOfFolder(folder: FileSystemDirectoryHandle): Promise<readonly FolderText[]> {
  return textsOf(await below(folder, ""));
}

async function below(folder: FileSystemDirectoryHandle, path: string): Promise<readonly Chosen[]> {
  const found: Chosen[] = [];
  for await (const [name, entry] of folder.entries()) {
    if (entry.kind === "directory") found.push(...(await below(entry as FileSystemDirectoryHandle, `${path}${name}/`)));
    else if (isText(name)) found.push(ofFile(await (entry as FileSystemFileHandle).getFile(), `${path}${name}`));
  }
  return found;
}

/** The texts of files that were chosen: those of a folder, some by themselves, or those of one ZIP archive. */
export async function textsOfFiles(files: readonly File[]): Promise<readonly FolderText[]> {
  const [archive] = files.filter(({ name }) => /\.zip$/i.test(name));
  if (archive !== undefined) return textsOf(inRoot(await inArchive(archive)));
  const chosen = files.filter(({ name }) => isText(name));
  // What a picker of folders gives has the folder's own name in front.
  if (chosen.some(({ webkitRelativePath }) => webkitRelativePath !== ""))
    return textsOf(inRoot(chosen.map((file) => ofFile(file, file.webkitRelativePath))));
  return textsOf(
    chosen.map((file) => ofFile(file, file.name)),
    placed,
  );
}

function ofFile(file: File, path: string): Chosen {
  return { path, size: file.size, bytes: async () => new Uint8Array(await file.arrayBuffer()) };
}

async function inArchive(archive: File): Promise<readonly Chosen[]> {
  try {
    const members = await membersOf(archive);
    return members
      .filter(({ name }) => isText(name) && !name.startsWith("__MACOSX/"))
      .map((member) => ({
        path: member.name.replaceAll("\\", "/"),
        size: member.unpacked,
        bytes: () =>
          bytesOf(archive, member, () => undefined).catch(() => {
            throw new NotTexts(FIRM.badArchive(archive.name));
          }),
      }));
  } catch {
    throw new NotTexts(FIRM.badArchive(archive.name));
  }
}

function isText(name: string): boolean {
  return /\.topics?$/.test(name);
}

/** Paths below the folder that holds `folder.topics`, where that is not the outermost; what lies elsewhere keeps its path. */
function inRoot(chosen: readonly Chosen[]): readonly Chosen[] {
  const [head] = chosen
    .map(({ path }) => path)
    .filter((path) => /(?:^|\/)folder\.topics$/.test(path))
    .sort((a, b) => a.split("/").length - b.split("/").length || (a < b ? -1 : 1));
  const root = head?.slice(0, -"folder.topics".length) ?? "";
  return chosen.map((one) => (one.path.startsWith(root) ? { ...one, path: one.path.slice(root.length) } : one));
}

/** A text that was chosen without its folder, at its place: shared ones say so in their first line. */
function placed({ file, text }: FolderText): FolderText {
  if (!file.endsWith(".topic")) return { file, text };
  const first = text
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/)
    .find((line) => line.trim() !== "" && !line.trim().startsWith("#"));
  return { file: `${/^shared\b/.test(first ?? "") ? "shared" : "topics"}/${file}`, text };
}

async function textsOf(
  chosen: readonly Chosen[],
  place: (text: FolderText) => FolderText = (text) => text,
): Promise<readonly FolderText[]> {
  if (chosen.length === 0) throw new NotTexts(FIRM.noTexts);
  if (chosen.length > MOST_TEXTS) throw new NotTexts(FIRM.tooMany(chosen.length, MOST_TEXTS));
  const texts = new Map<string, FolderText>();
  for (const { path, size, bytes } of chosen) {
    if (size > MOST_BYTES) throw new NotTexts(FIRM.tooLarge(path, size, MOST_BYTES));
    const text = place({ file: path, text: textIn(await bytes(), path) });
    if (texts.has(text.file)) throw new NotTexts(FIRM.twice(text.file));
    texts.set(text.file, text);
  }
  return [...texts.values()].sort((a, b) => (a.file < b.file ? -1 : 1));
}

/** The mark in front of a text belongs to what is hashed, and stays. */
function textIn(bytes: Uint8Array, path: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new NotTexts(FIRM.notText(path));
  }
}
