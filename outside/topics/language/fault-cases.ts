import { faultText, ownTexts, readLibrary } from "@good-grounds/topics/texts";

/** A text with something wrong in it, and what is printed of that. */
export interface FaultCase {
  readonly name: string;
  readonly text: string;
  readonly told: string;
}

const SHARED = ownTexts().filter(({ file }) => file.startsWith("shared/"));

/** Cases as they stand in faults.txt: "== what is wrong", the text, "--", and what is printed. */
export function casesIn(file: string): readonly FaultCase[] {
  return file
    .split(/^== /m)
    .slice(1)
    .map((one) => {
      const [head = "", told = ""] = one.split(/^--\n/m);
      const end = head.indexOf("\n");
      return { name: head.slice(0, end), text: head.slice(end + 1), told: told.trimEnd() };
    });
}

/** Everything wrong with a text beside the shared texts, as the terminal has it. */
export function toldOf(text: string): string {
  const { faults } = readLibrary([...SHARED, { file: "a.topic", text }]);
  return faults.map((fault) => faultText(fault, text)).join("\n\n");
}
