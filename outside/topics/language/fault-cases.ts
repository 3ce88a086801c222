import { faultText, readLibrary } from "@good-grounds/topics/texts";

/** A text with something wrong in it, and what is printed of that. */
export interface FaultCase {
  readonly name: string;
  readonly text: string;
  readonly told: string;
}

/** What the cases share: a text of their own, so that no name that our topics come to share changes what is told. */
const SHARED = {
  file: "shared/heat.topic",
  text: `shared heat: Signs of heat

  fact heat: Any sign of heat?
    found by glance
    none: nothing shows a sign of heat
    marks: there are marks of heat
    now: a part is too hot to touch
  fact damp: Is it damp?
    found by glance
    no: it is dry
    yes: it is damp
  state damage of a part: what has become of the part
    sound: is sound
    hurt: is hurt
      when heat is not none and damp
`,
};

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

/** Everything wrong with a text beside the shared one, as the terminal has it. */
export function toldOf(text: string): string {
  const { faults } = readLibrary([SHARED, { file: "a.topic", text }]);
  return faults.map((fault) => faultText(fault, text)).join("\n\n");
}
