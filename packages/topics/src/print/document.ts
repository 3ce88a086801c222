import type { Condition, Word } from "../document/condition.ts";
import type { Document, LayerNode, Link, LinkPart, Recorded, Statement } from "../document/document.ts";
import { conditionLines } from "./condition.ts";

/** A document as text, in the one spelling that the formatter gives. */
export function printDocument(document: Document): string {
  const lines = [
    ...notes(document),
    `${document.kind} ${document.id.text}${document.kind === "more" ? "" : `: ${document.title}`}`,
  ];
  const add = (below: readonly string[]) => lines.push(...below.map((line) => (line === "" ? "" : `  ${line}`)));
  if (document.group !== undefined)
    add([`in ${document.group.text}${document.place === undefined ? "" : ` ${document.place}`}`]);
  if (document.items.length > 0) add([`answers ${names(document.items)}`]);
  if (document.uses.length > 0) add([`uses ${names(document.uses)}`]);
  let before = "";
  for (const statement of document.statements) {
    // Statements of a kind stand together; a blank line parts the kinds.
    if (statement.kind !== before) add([""]);
    before = statement.kind;
    add([...notes(statement), ...printStatement(statement)]);
  }
  return `${[...lines, ...document.notesAtEnd.map((note) => `# ${note}`)].join("\n")}\n`;
}

function printStatement(one: Statement): readonly string[] {
  switch (one.kind) {
    case "fact":
      return [
        `fact ${one.name.text}${one.inNoOrder ? " in no order" : ""}: ${one.question}`,
        ...deeper([
          ...asked(one),
          ...one.values.flatMap(valueLines),
          ...one.alike.flatMap((pair) => [
            ...notes(pair),
            `alike ${pair.values.map(({ text }) => text).join(" and ")}: ${pair.because}`,
          ]),
          ...one.retired.flatMap((old) => [...notes(old), `retired ${old.value.text}: read as ${old.readAs.text}`]),
        ]),
      ];
    case "amount":
      return [
        `amount ${one.name.text} in ${one.unit.text}${one.worse === undefined ? "" : `, ${one.worse} is worse`}: ${one.question}`,
        ...deeper([...asked(one), `called ${one.called}`]),
      ];
    case "contested":
      return [
        `contested ${one.name.text}: ${one.question}`,
        ...deeper(one.positions.flatMap((position) => [...valueLines(position), `  because ${position.because}`])),
      ];
    case "state":
      return [
        `state ${one.name.text} of ${one.thing}: ${one.words}`,
        ...deeper(one.values.flatMap((value) => [...valueLines(value), ...deeper(when(value.when))])),
      ];
    case "route":
      return [
        `route ${one.name.text} (${one.hazard.replaceAll("-", " ")}): ${one.clause}`,
        ...deeper([...condition("there when", one.when), ...one.layers.flatMap(layerLines)]),
      ];
    case "departure":
      return [`departure: ${one.clause}${regulations(one.regulations)}`, ...deeper(when(one.when))];
    case "danger":
      return [
        `danger ${one.name.text} ${one.least}: ${one.clause}${regulations(one.regulations)}`,
        ...deeper(when(one.when)),
      ];
    case "contradiction":
      return [`contradiction: ${one.clause}`, ...deeper(when(one.when))];
    case "said":
      return [
        `said ${one.under}: ${one.words}`,
        ...deeper([...when(one.when), ...(one.unsure.length === 0 ? [] : [`unsure ${names(one.unsure)}`])]),
      ];
    case "remedy":
      return [`remedy: ${one.words}`, ...deeper([...makes(one.makes), ...condition("fits when", one.fits)])];
    case "given":
      return [`given ${one.fact.text} ${either(one.values)}`];
    case "formerly":
      return [formerLine(one)];
    case "example":
      return exampleLines(one);
  }
}

function asked(one: Extract<Statement, { kind: "fact" | "amount" }>): readonly string[] {
  return [
    `found by ${one.effort}`,
    ...(one.answered === undefined ? [] : linkLines(one.answered)),
    ...(one.recorded === undefined ? [] : recordedLines(one.recorded)),
    ...(one.plain === undefined ? [] : [`plain ${one.plain}`]),
  ];
}

function linkLines(link: Link): readonly string[] {
  const gives = [
    ...(link.met.length === 0 ? [] : [`${either(link.met)} when met`]),
    ...(link.notMet.length === 0 ? [] : [`${either(link.notMet)} when not met`]),
  ];
  return [
    ...notes(link),
    `answered by ${partWords(link)}: ${gives.join(", ")}`,
    ...deeper([
      ...link.and.flatMap((part) => [...notes(part), `with ${partWords(part)}`]),
      ...(link.findings === undefined
        ? []
        : [link.findings === "none" ? "findings never" : "findings only where not met"]),
    ]),
  ];
}

function recordedLines(recorded: Recorded): readonly string[] {
  const gives = recorded.gives.map((one) => `${one.recorded.text} is ${either(one.values)}`);
  return [
    ...notes(recorded),
    `recorded as ${recorded.property.text}${gives.length === 0 ? "" : `: ${gives.join(", ")}`}`,
  ];
}

function layerLines(layer: LayerNode): readonly string[] {
  const { holding } = layer;
  return [
    ...notes(layer),
    `layer ${layer.name.text} (${layer.provision.replaceAll("-", " ")}): ${layer.words}${regulations(layer.regulations)}`,
    ...deeper(
      holding.kind === "one-event"
        ? ["holds until one event"]
        : holding.kind === "as"
          ? [`as ${holding.state.text}`]
          : [...condition("gone when", holding.gone), ...condition("sound when", holding.sound)],
    ),
  ];
}

function exampleLines(one: Extract<Statement, { kind: "example" }>): readonly string[] {
  const facts = one.facts.map(({ fact, values }) => `${fact.text} ${either(values)}`);
  const possible = one.possible.join(" or ");
  const open = one.open.length === 0 ? "" : `, open ${one.open.map(({ text }) => text).join(" and ")}`;
  return [
    `example ${one.name}`,
    ...deeper([
      ...one.facts.flatMap(notes),
      ...(facts.length === 0 ? [] : [facts.join(", ")]),
      ...one.limited.flatMap((fact) => [...notes(fact), `${fact.fact.text} limited: ${fact.reason}`]),
      ...(one.taking.length === 0
        ? []
        : [`taking ${one.taking.map(({ point, position }) => `${point.text} ${position.text}`).join(", ")}`]),
      `-> ${possible}${one.isFI ? ", so FI" : ""}${open} (${one.source})`,
    ]),
  ];
}

function valueLines(value: {
  readonly name: Word;
  readonly clause: string;
  readonly plain?: string;
  readonly notes: readonly string[];
}): readonly string[] {
  return [
    ...notes(value),
    `${value.name.text}: ${value.clause}${value.plain === undefined ? "" : ` / ${value.plain}`}`,
  ];
}

function makes(list: readonly { readonly fact: Word; readonly value: Word }[]): readonly string[] {
  return list.length === 0 ? [] : [`makes ${list.map(({ fact, value }) => `${fact.text} ${value.text}`).join(", ")}`];
}

function when(one: Condition | undefined): readonly string[] {
  return condition("when", one);
}

function condition(begins: string, one: Condition | undefined): readonly string[] {
  if (one === undefined) return [];
  const { head, below } = conditionLines(one);
  return [`${begins} ${head}`, ...deeper(below)];
}

function partWords({ by, matter }: LinkPart): string {
  return matter === undefined ? by.text : `${by.text} ${matter.text}`;
}

function notes({ notes: list }: { readonly notes: readonly string[] }): readonly string[] {
  return list.map((note) => `# ${note}`);
}

function regulations(list: readonly string[]): string {
  return list.length === 0 ? "" : ` [${list.join(", ")}]`;
}

function names(words: readonly Word[]): string {
  return words.map(({ text }) => text).join(", ");
}

function either(words: readonly Word[]): string {
  return words.map(({ text }) => text).join(" or ");
}

function deeper(lines: readonly string[]): readonly string[] {
  return lines.map((line) => `  ${line}`);
}

function formerLine({ name, fact, values }: Extract<Statement, { kind: "formerly" }>): string {
  if (fact === undefined) return `formerly ${name.text}: no longer asked`;
  const says = values.map(({ former, now }) => `${former.text} is ${either(now)}`);
  return `formerly ${name.text} as ${fact.text}${says.length === 0 ? "" : `: ${says.join(", ")}`}`;
}
