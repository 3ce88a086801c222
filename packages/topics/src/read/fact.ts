import { EFFORTS, type Effort } from "@good-grounds/core";
import type { Word } from "../document/condition.ts";
import type { Amount, Fact, Link, Recorded, Value } from "../document/document.ts";
import { type Line, spotIn } from "../text/lines.ts";
import { AND, type Desk, listOf, match } from "./desk.ts";
import { placed, readLink, readRecorded } from "./link.ts";
import { behind, type Place, readBelow } from "./statements.ts";

/** `fact NAME [in no order]: question`. */
export function readFact(line: Line, desk: Desk): Fact | undefined {
  const { name, loose, question } =
    match(line, /^fact (?<name>[a-z0-9][a-z0-9-]*)(?<loose> in no order)?: (?<question>.+)$/) ?? {};
  if (name === undefined || question === undefined)
    return desk.misspelt(line, '"fact", a name, ":", and the question as one electrician puts it to another');
  return desk.within(`fact ${name.text}`, () => {
    const asked = new Asked();
    const values: Value[] = [];
    const alike: Fact["alike"][number][] = [];
    const retired: Fact["retired"][number][] = [];
    readBelow(
      line,
      desk,
      [
        ...asked.places(desk),
        { begins: "alike", often: true, read: (one) => readAlike(one, desk, alike) },
        { begins: "retired", often: true, read: (one) => readRetired(one, desk, retired) },
      ],
      (one) => {
        const value = readValue(one, desk);
        if (value !== undefined) values.push(value);
        return value !== undefined;
      },
    );
    if (values.length < 2)
      desk.fault(
        spotIn(line),
        `a fact with ${values.length === 1 ? "one value" : "no values"}`,
        "two or more, the worst last",
        'write each as "value: what is so"',
      );
    const effort = asked.effortOf(line, desk);
    return {
      kind: "fact",
      ...placed(line),
      name,
      question: question.text,
      inNoOrder: loose !== undefined,
      values,
      alike,
      retired,
      ...asked.rest(),
      effort,
    };
  });
}

/** `amount NAME in UNIT[, higher|lower is worse]: question`. */
export function readAmount(line: Line, desk: Desk): Amount | undefined {
  const { name, unit, worse, question } =
    match(
      line,
      /^amount (?<name>[a-z0-9][a-z0-9-]*) in (?<unit>[^,:]+)(?:, (?<worse>higher|lower) is worse)?: (?<question>.+)$/,
    ) ?? {};
  if (name === undefined || unit === undefined || question === undefined)
    return desk.misspelt(line, '"amount", a name, "in", a unit, perhaps ", lower is worse", ":", and the question');
  return desk.within(`amount ${name.text}`, () => {
    const asked = new Asked();
    let called = "";
    readBelow(line, desk, [
      ...asked.places(desk),
      {
        begins: "called",
        read: (one) => {
          called = behind(one, "called").text;
        },
      },
    ]);
    if (called === "")
      desk.fault(
        spotIn(line),
        "an amount without a name in words",
        '"called" and what is measured',
        'write "called depth of the cable" below it',
      );
    const effort = asked.effortOf(line, desk);
    const worst = worse?.text === "higher" || worse?.text === "lower" ? ({ worse: worse.text } as const) : {};
    return {
      kind: "amount",
      ...placed(line),
      name,
      unit,
      question: question.text,
      called,
      ...worst,
      ...asked.rest(),
      effort,
    };
  });
}

/** What facts and amounts have in common. */
class Asked {
  #effort: Effort | undefined;
  #isEffortTold = false;
  #plain: string | undefined;
  #answered: Link | undefined;
  #recorded: Recorded | undefined;

  places(desk: Desk): readonly Place[] {
    return [
      {
        begins: "found by",
        read: (line) => {
          this.#isEffortTold = true;
          this.#effort = readEffort(line, desk);
        },
      },
      {
        begins: "answered by",
        read: (line) => {
          this.#answered = readLink(line, desk);
        },
      },
      {
        begins: "recorded as",
        read: (line) => {
          this.#recorded = readRecorded(line, desk);
        },
      },
      {
        begins: "plain",
        read: (line) => {
          this.#plain = behind(line, "plain").text;
        },
      },
    ];
  }

  effortOf(line: Line, desk: Desk): Effort {
    if (!this.#isEffortTold)
      desk.fault(
        spotIn(line),
        "nothing says what it takes to find it out",
        `"found by" and one of ${EFFORTS.join(", ")}`,
        'write "found by glance" below it, or what it takes',
      );
    return this.#effort ?? "glance";
  }

  rest() {
    return {
      ...(this.#plain === undefined ? {} : { plain: this.#plain }),
      ...(this.#answered === undefined ? {} : { answered: this.#answered }),
      ...(this.#recorded === undefined ? {} : { recorded: this.#recorded }),
    };
  }
}

function readEffort(line: Line, desk: Desk): Effort | undefined {
  desk.nothingBelow(line);
  const { text } = behind(line, "found by");
  return EFFORTS.find((one) => one === text) ?? desk.misspelt(line, `"found by" and one of ${EFFORTS.join(", ")}`);
}

/** `value: clause [/ plain clause]`. */
function readValue(line: Line, desk: Desk): Value | undefined {
  const { name, clause, plain } =
    match(line, /^(?<name>[a-z0-9][a-z0-9.-]*): (?<clause>.+?)(?: \/ (?<plain>.+))?$/) ?? {};
  if (name === undefined || clause === undefined) return undefined;
  desk.nothingBelow(line);
  return { ...placed(line), name, clause: clause.text, ...(plain === undefined ? {} : { plain: plain.text }) };
}

/** `alike VALUE and VALUE: why both are offered`. */
function readAlike(line: Line, desk: Desk, alike: Fact["alike"][number][]): void {
  const { values, because } = match(line, /^alike (?<values>[a-z0-9.-]+(?: and [a-z0-9.-]+)+): (?<because>.+)$/) ?? {};
  desk.nothingBelow(line);
  if (values === undefined || because === undefined)
    desk.misspelt(line, '"alike", two values or more joined by "and", ":", and why each of them is offered');
  else alike.push({ ...placed(line), values: listOf(values, AND), because: because.text });
}

function readRetired(line: Line, desk: Desk, retired: { value: Word; readAs: Word }[] & unknown[]): void {
  const { value, readAs } = match(line, /^retired (?<value>\S+): read as (?<readAs>\S+)$/) ?? {};
  if (value === undefined || readAs === undefined)
    desk.misspelt(line, '"retired", a former value, ": read as", and the value it meant');
  else retired.push({ ...placed(line), value, readAs } as { value: Word; readAs: Word });
}
