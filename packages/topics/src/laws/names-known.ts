import type { Word } from "../document/condition.ts";
import type { Document, LinkPart } from "../document/document.ts";
import { type TextFault, together } from "../text/fault.ts";
import { nearTo } from "../text/near.ts";

/** Names that other parts of the program give: checks with the matters they settle, recorded properties with their values, items of the inspection. */
export interface NamesKnown {
  readonly checks: ReadonlyMap<string, ReadonlySet<string>>;
  /** No values where it is a quantity alone. */
  readonly properties: ReadonlyMap<string, readonly string[]>;
  readonly items: readonly string[];
}

/** Checks, matters, recorded properties and items that a text names and that are not there. */
export function namesUnknown(document: Document, known: NamesKnown): readonly TextFault[] {
  const faults: TextFault[] = [];
  const look = (word: Word, names: readonly string[], what: string, within: readonly string[]) => {
    if (names.includes(word.text)) return true;
    const [near] = nearTo(word.text, names);
    faults.push({
      file: word.at.file ?? document.file,
      at: word.at,
      found: `no ${what} is called "${word.text}"`,
      expected: names.length > 40 ? `the id of one of ${names.length}` : `one of ${names.join(", ") || "none"}`,
      advice: near === undefined ? "name one that is there" : `is it "${near}"?`,
      within,
    });
    return false;
  };
  for (const item of document.items) look(item, known.items, "item of the inspection", []);
  for (const one of document.statements) {
    if (one.kind !== "fact" && one.kind !== "amount") continue;
    const within = [`${one.kind} ${one.name.text}`];
    const { answered, recorded } = one;
    const parts: readonly LinkPart[] = answered === undefined ? [] : [answered, ...answered.and];
    for (const { by, matter } of parts)
      if (look(by, [...known.checks.keys()], "check", within) && matter !== undefined)
        look(matter, [...(known.checks.get(by.text) ?? [])], `matter of "${by.text}"`, within);
    if (
      recorded === undefined ||
      !look(recorded.property, [...known.properties.keys()], "property of the file", within)
    )
      continue;
    const values = known.properties.get(recorded.property.text) ?? [];
    for (const { recorded: value } of recorded.gives)
      look(value, values, `value of "${recorded.property.text}"`, within);
  }
  return together(faults);
}
