import type { Word } from "../document/condition.ts";
import type { Document } from "../document/document.ts";
import type { TextFault } from "../text/fault.ts";
import { nearTo } from "../text/near.ts";
import { isNamed, type Named, namesIn, type Shared } from "./shared.ts";

/** What may be spoken of in one topic, and what is wrong with what is spoken of. */
export class Scope {
  readonly file: string;
  readonly faults: TextFault[] = [];
  readonly #names = new Map<string, Named>();
  readonly #sharedNames = new Set<string>();
  readonly #everywhere: Shared["everywhere"];
  readonly #unknown = new Map<string, { fault: TextFault; also: number[] }>();

  constructor(document: Document, shared: Shared) {
    this.file = document.file;
    for (const word of document.uses) this.#use(word, shared);
    for (const statement of document.statements) if (isNamed(statement)) this.#own(statement, shared);
    this.#everywhere = shared.everywhere.filter(({ when }) =>
      namesIn(when).every((name) => this.#names.has(name) && this.#sharedNames.has(name)),
    );
  }

  get(name: string): Named | undefined {
    return this.#names.get(name);
  }

  /** Dangers and contradictions of shared texts that speak of nothing but what is asked here. */
  everywhere(): Shared["everywhere"] {
    return this.#everywhere;
  }

  isShared(name: string): boolean {
    return this.#sharedNames.has(name);
  }

  all(): readonly Named[] {
    return [...this.#names.values()];
  }

  fault(word: Word, found: string, expected: string, advice: string, within: readonly string[] = []): undefined {
    this.faults.push({ file: this.file, at: word.at, found, expected, advice, within });
    return undefined;
  }

  /** What is called so; a name that nothing has is told once, with every line on which it stands. */
  find(word: Word, within: readonly string[] = []): Named | undefined {
    const found = this.#names.get(word.text);
    if (found !== undefined) return found;
    const told = this.#unknown.get(word.text);
    if (told !== undefined) {
      if (!told.also.includes(word.at.line) && word.at.line !== told.fault.at.line) told.also.push(word.at.line);
      return undefined;
    }
    const names = [...this.#names.keys()];
    const [near] = nearTo(word.text, names);
    const also: number[] = [];
    const fault: TextFault = {
      file: this.file,
      at: word.at,
      found: `nothing here is called "${word.text}"`,
      expected: `one of ${names.join(", ") || "the facts of the topic (it has none)"}`,
      advice: near === undefined ? 'define it, or name what is shared under "uses"' : `is it "${near}"?`,
      within,
      also,
    };
    this.faults.push(fault);
    this.#unknown.set(word.text, { fault, also });
    return undefined;
  }

  #use(word: Word, shared: Shared): void {
    const found = shared.facts.get(word.text) ?? shared.states.get(word.text) ?? shared.points.get(word.text);
    if (found === undefined) {
      const all = [...shared.states.keys(), ...shared.facts.keys(), ...shared.points.keys()];
      const [near] = nearTo(word.text, all);
      this.fault(
        word,
        `nothing shared is called "${word.text}"`,
        `one of ${all.join(", ") || "nothing (there are no shared texts)"}`,
        near === undefined ? "see the shared folder" : `is it "${near}"?`,
      );
      return;
    }
    this.#bring(found, shared);
  }

  /** A state brings what its conditions speak of. */
  #bring(named: Named, shared: Shared): void {
    const name = named.name.text;
    if (this.#names.has(name)) return;
    this.#names.set(name, named);
    this.#sharedNames.add(name);
    if (named.kind !== "state") return;
    for (const { when } of named.values)
      for (const one of when === undefined ? [] : namesIn(when)) {
        const found = shared.facts.get(one) ?? shared.states.get(one) ?? shared.points.get(one);
        if (found !== undefined) this.#bring(found, shared);
      }
  }

  #own(named: Named, shared: Shared): void {
    const { text } = named.name;
    if (shared.facts.has(text) || shared.states.has(text) || shared.points.has(text))
      this.fault(
        named.name,
        `"${text}" is the name of something that topics share`,
        "a name of its own for what this topic alone asks",
        'name the shared one under "uses", or name this one otherwise',
      );
    else if (this.#names.has(text))
      this.fault(named.name, `"${text}" a second time`, "each name once", "name one of the two otherwise");
    else this.#names.set(text, named);
  }
}
