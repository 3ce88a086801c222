import type { InspectionFile } from "@good-grounds/inspection";
import { printable } from "@good-grounds/report";
import type { FolderLabel, Topics } from "@good-grounds/topics";

/** The folder with which a file says that it was judged, and the one used here; null where that is none. */
interface JudgedOtherwise {
  readonly file: FolderLabel;
  readonly here: FolderLabel | null;
}

/** Where a file was judged with another folder of topics than is used here; undefined where it is the same or names none. */
function judgedOtherwise(
  { topics: said }: Pick<InspectionFile, "topics">,
  { folder }: Topics,
): JudgedOtherwise | undefined {
  return said === undefined || said.hash === folder?.hash ? undefined : { file: said, here: folder ?? null };
}

/** The same in JSON output; nothing where nothing differs. */
export function judgedWithJson(
  file: Pick<InspectionFile, "topics">,
  topics: Topics,
): { readonly judgedWith?: JudgedOtherwise } {
  const otherwise = judgedOtherwise(file, topics);
  return otherwise === undefined ? {} : { judgedWith: otherwise };
}

/** The same as a note for standard error, with its line end; empty where nothing differs. */
export function judgedWithNote(name: string, file: Pick<InspectionFile, "topics">, topics: Topics): string {
  const otherwise = judgedOtherwise(file, topics);
  if (otherwise === undefined) return "";
  const here =
    otherwise.here === null
      ? "Here only the program's own topics are used; name the folder with --topics"
      : `Here the topics of ${called(otherwise.here)} are used`;
  return `${printable(`${name}: judged with the topics of ${called(otherwise.file)}. ${here}. What follows may differ.`)}\n`;
}

function called({ name, hash }: FolderLabel): string {
  return `${name} (${hash.slice(0, 12)})`;
}
