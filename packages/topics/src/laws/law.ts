import type { Compiled, Severity } from "@good-grounds/core";
import type { Document } from "../document/document.ts";
import type { Spot } from "../text/fault.ts";
import type { Topic } from "../topic.ts";

/** A topic that is held to the laws, with the text it was read from and compiled. */
export interface LawSubject {
  readonly topic: Topic;
  readonly document: Document;
  /** Texts whose dangers hold in it as well. */
  readonly shared?: readonly Document[];
  readonly compiled: Compiled;
}

/** A law that a topic does not keep. */
export interface LawBreak {
  readonly law: string;
  readonly topic: string;
  /** A clause: `"flat" → "none" lowers the class`. */
  readonly found: string;
  readonly expected: string;
  /** The line of the text it is about, where there is one. */
  readonly at?: Spot;
  /** Lines of an example that shows it, ready to be pasted into the text. */
  readonly example?: readonly string[];
  /** Lines of the text that decided, each with its place. */
  readonly decided?: readonly string[];
}

/** An example of a text for one full assignment. */
export function exampleLines(
  { compiled }: Pick<LawSubject, "compiled">,
  words: string,
  values: readonly number[],
  follows: Severity,
  source = "law",
): readonly string[] {
  const said = compiled.variables.map(({ kind, name, cells }, i) => {
    const value = cells.values[values[i] ?? 0] ?? "";
    const about = kind === "fact" ? compiled.subject.facts[name] : undefined;
    return { kind, text: `${name} ${about?.kind === "quantity" ? withinCell(value) : value}` };
  });
  const of = (kind: string) => said.filter((one) => one.kind === kind).map(({ text }) => text);
  const points = of("point");
  return [
    `example ${words}`,
    `  ${of("fact").join(", ")}`,
    ...(points.length === 0 ? [] : [`  taking ${points.join(", ")}`]),
    `  -> ${follows} (${source})`,
  ];
}

/** A quantity as an example has it, from the words of a range: "50 mm or more, less than 2 m" is "50 mm". */
function withinCell(range: string): string {
  const [quantity = range] = /[<>]?\d[\d.]* ?\S+/.exec(range) ?? [];
  return /^less than/.test(range) ? `<${quantity}` : /^more than/.test(range) ? `>${quantity}` : quantity;
}
