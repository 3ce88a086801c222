import type { Word } from "../document/condition.ts";
import type { FolderNode } from "../document/folder.ts";
import type { TextFault } from "../text/fault.ts";
import { linesOf, spotIn } from "../text/lines.ts";
import { Desk, match } from "./desk.ts";
import { placed } from "./link.ts";
import { behind, readBelow } from "./statements.ts";

/** The notation this reader knows. */
const NOTATION = "1";

/** `folder: NAME`, below it `notation 1`, `release RELEASE` and `answered for by PERSON`. */
export function readFolderText(
  text: string,
  file: string,
  release: string,
): { readonly folder?: FolderNode; readonly faults: readonly TextFault[] } {
  const { lines, faults } = linesOf(text, file);
  if (faults.length > 0) return { faults };
  const desk = new Desk(file);
  const [first, second] = lines;
  const name = first === undefined ? "" : (match(first, /^folder: (?<name>.+)$/)?.name?.text ?? "");
  if (first === undefined || name === "") {
    const at = first === undefined ? { line: 1, from: 1, to: 2 } : spotIn(first);
    desk.fault(at, "no folder", '"folder:" and the name of the firm in the first line', "say whose folder it is");
    return { faults: desk.faults };
  }
  if (second !== undefined)
    desk.fault(spotIn(second), "a second beginning", "everything else below the first line", "indent it by two spaces");
  let notation: Word | undefined;
  let against: Word | undefined;
  let person = "";
  const word = (begins: string) => (line: Parameters<typeof match>[0]) => {
    desk.nothingBelow(line);
    return match(line, new RegExp(`^${begins} (?<word>\\S+)$`))?.word;
  };
  readBelow(first, desk, [
    {
      begins: "notation",
      read: (line) => {
        notation = word("notation")(line);
      },
    },
    {
      begins: "release",
      read: (line) => {
        against = word("release")(line);
      },
    },
    {
      begins: "answered for by",
      read: (line) => {
        person = behind(line, "answered for by").text;
      },
    },
  ]);
  if (notation?.text !== NOTATION)
    desk.fault(
      notation?.at ?? spotIn(first),
      notation === undefined ? "no notation" : `notation ${notation.text}`,
      `"notation ${NOTATION}"`,
      notation === undefined
        ? `write "notation ${NOTATION}" below the name`
        : "it was written for another version of this program",
    );
  if (against === undefined || !/^[0-9a-f]{12}$/.test(against.text))
    desk.fault(
      against?.at ?? spotIn(first),
      "no release of the topics it was written against",
      '"release" and its twelve signs',
      `write "release ${release}", which is the one of this program`,
    );
  if (person === "")
    desk.fault(
      spotIn(first),
      "nobody answers for it",
      '"answered for by" and a person',
      "say who answers for what the folder says",
    );
  if (desk.faults.length > 0 || against === undefined) return { faults: desk.faults };
  return { folder: { ...placed(first), name, release: against, answersFor: person }, faults: [] };
}
