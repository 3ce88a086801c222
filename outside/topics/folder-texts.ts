import { readdirSync, readFileSync } from "node:fs";
import type { Text } from "@good-grounds/topics/texts";

const FOLDER = new URL("a-firm/", import.meta.url);

/** The folder of an invented firm, kept as it would be written. */
export const A_FIRM: readonly Text[] = readdirSync(FOLDER, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.topics?$/.test(name))
  .map((name) => name.replaceAll("\\", "/"))
  .sort()
  .map((file) => ({ file, text: readFileSync(new URL(file, FOLDER), "utf8") }));

/** The same folder with one text changed, added, or left out where nothing comes back. */
export function withText(file: string, change: (text: string) => string | undefined): readonly Text[] {
  const before = A_FIRM.find((one) => one.file === file)?.text ?? "";
  const text = change(before);
  return [...A_FIRM.filter((one) => one.file !== file), ...(text === undefined ? [] : [{ file, text }])];
}
