import type { Folder } from "../folder/read-folder.ts";
import type { TextFault } from "../text/fault.ts";
import { lawsBrokenIn, warningsIn } from "./folder.ts";
import type { LawBreak } from "./law.ts";
import { LAWS } from "./laws.ts";
import { type NamesKnown, namesUnknown } from "./names-known.ts";
import type { Warning } from "./warnings.ts";

/** What is wrong with a firm's folder that could be read, and what in it does nothing. */
export interface FolderChecked {
  readonly faults: readonly TextFault[];
  readonly broken: readonly LawBreak[];
  readonly warnings: readonly Warning[];
  /** The text that each topic or shared page of the folder was read from. */
  readonly files: ReadonlyMap<string, string>;
}

/** Holds a folder that was read to the names that are there and to every law. */
export function checkFolder(folder: Folder, known: NamesKnown): FolderChecked {
  return {
    files: new Map(folder.documents.map(({ id, file }) => [id.text, file])),
    faults: folder.documents.flatMap((document) => namesUnknown(document, known)),
    broken: lawsBrokenIn(folder),
    warnings: warningsIn(folder),
  };
}

/**
 * A law that is not kept as lines: the place, the law, what decided, an example to paste. `placeOf` says how a text of
 * the folder is called where that is more than its path in there.
 */
export function breakLines(
  { law, topic, found, expected, at, example = [], decided = [] }: LawBreak,
  files: ReadonlyMap<string, string>,
  placeOf: (file: string) => string = (file) => file,
): readonly string[] {
  const file = at?.file ?? files.get(topic);
  const place = at === undefined || file === undefined ? topic : `${placeOf(file)}:${at.line}:${at.from}`;
  const block = (head: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [`  ${head}`, ...lines.map((line) => `    ${line}`)];
  return [
    `${place}  ${found}`,
    `  law ${law}: ${LAWS[law as keyof typeof LAWS] ?? ""}`,
    `  expected: ${expected}`,
    ...block("what decided:", decided),
    ...block("an example that shows it, to be pasted:", example),
  ];
}
