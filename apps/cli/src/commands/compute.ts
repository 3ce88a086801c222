import { COMPUTATIONS, type Computation, givenFromText, type Need } from "@good-grounds/computations";
import { type CheckLabel, type Issue, Reckoner, UNIT_SYMBOL } from "@good-grounds/core";
import { givenName, renderConclusion, renderResults, wrapped } from "@good-grounds/report";
import { EXIT, type ExitCode, type Host, Stop, widthOf } from "../host.ts";
import { conclusionJson, problemsJson, resultsJson } from "../json.ts";
import { issueLines } from "../words.ts";

export interface ComputeOptions {
  readonly list: boolean;
  readonly help: boolean;
  readonly json: boolean;
}

/** `goodgrounds compute`: one check, calculation or table with figures given by hand. */
export function computeCommand(args: readonly string[], options: ComputeOptions, host: Host): ExitCode {
  const width = widthOf(host);
  if (options.list) {
    host.stdout.write(listing(width));
    return EXIT.done;
  }
  const [name, ...pairs] = args;
  if (name === undefined)
    throw new Stop(EXIT.input, "compute: no name given. `goodgrounds compute --list` shows what there is.");
  const one = COMPUTATIONS.get(name);
  if (one === undefined)
    throw new Stop(EXIT.input, `compute: nothing is called ${JSON.stringify(name.slice(0, 60))}.${nearest(name)}`);
  if (options.help) {
    host.stdout.write(describe(one, width));
    return EXIT.done;
  }
  const made = givenFromText(one.needs, textOf(pairs, one));
  if (!made.ok) {
    const issues = made.issues.map((issue) => asTyped(issue, one));
    if (options.json) host.stdout.write(`${JSON.stringify(problemsJson(name, issues), null, 2)}\n`);
    host.stderr.write(issueLines(`compute ${name}`, issues));
    return EXIT.input;
  }
  const reckon = new Reckoner(true);
  const label: CheckLabel = { id: one.id, title: one.title, formula: one.formula, regulations: one.regulations };
  if ("conclude" in one) {
    const conclusion = one.conclude(made.given, reckon);
    host.stdout.write(
      options.json
        ? `${JSON.stringify(conclusionJson({ check: one.id, path: [], ...conclusion }), null, 2)}\n`
        : renderConclusion(label, conclusion, width),
    );
    return EXIT.done;
  }
  const { results, remarks } = one.compute(made.given, reckon);
  host.stdout.write(
    options.json
      ? `${JSON.stringify(resultsJson(label, results, remarks), null, 2)}\n`
      : renderResults(label, results, remarks, width),
  );
  return EXIT.done;
}

/** "zs=1.20 Ω" pairs by need; a need given several times becomes a list. Kebab case is accepted for camel case. */
function textOf(pairs: readonly string[], one: Computation): Record<string, string | string[]> {
  const names = new Map(
    Object.keys(one.needs).flatMap((need) => [[need, need] as const, [givenName(need), need] as const]),
  );
  const text: Record<string, string | string[]> = Object.create(null);
  for (const pair of pairs) {
    const at = pair.indexOf("=");
    if (at < 1) {
      throw new Stop(
        EXIT.input,
        `compute ${one.id}: ${JSON.stringify(pair.slice(0, 60))} is no pair. Write need=value, for example ${givenName(Object.keys(one.needs)[0] ?? "zs")}=...`,
      );
    }
    const key = names.get(pair.slice(0, at)) ?? pair.slice(0, at);
    const value = pair.slice(at + 1);
    const earlier = text[key];
    text[key] = earlier === undefined ? value : [earlier, value].flat();
  }
  return text;
}

/** An issue in the names of the command line: those that `--help` shows. */
function asTyped(issue: Issue, one: Computation): Issue {
  const path = issue.path.map((step) => (typeof step === "string" && step in one.needs ? givenName(step) : step));
  if (issue.code !== "unknown-need") return { ...issue, path };
  return { ...issue, path, expected: `one of ${Object.keys(one.needs).map(givenName).join(", ")}` };
}

function listing(width: number): string {
  const kinds: readonly (readonly [string, (one: Computation) => boolean])[] = [
    ["Checks", (one) => "conclude" in one && !("provision" in one)],
    ["Protective provisions", (one) => "provision" in one],
    ["Calculations and tables", (one) => !("conclude" in one)],
  ];
  const lines = kinds.flatMap(([heading, belongs]) => [
    heading,
    ...[...COMPUTATIONS.values()]
      .filter(belongs)
      .flatMap((one) => wrapped(one.title, width, `  ${one.id.padEnd(30)} `, " ".repeat(33))),
    "",
  ]);
  return `${lines.join("\n")}goodgrounds compute NAME --help shows what a computation needs.\n`;
}

function describe(one: Computation, width: number): string {
  const needs = Object.entries(one.needs).flatMap(([name, need]) =>
    wrapped(needWords(need), width, `  ${givenName(name).padEnd(22)} `, " ".repeat(25)),
  );
  const [example] = one.examples;
  const shown =
    example === undefined
      ? []
      : ["", `Example (${example.name}):`, ...wrapped(exampleWords(one.id, example.given), width, "  ", "    ")];
  return [
    ...wrapped(one.title, width),
    ...wrapped(one.formula, width, "  "),
    "",
    "Needs:",
    ...needs,
    ...shown,
    "",
  ].join("\n");
}

function needWords(need: Need): string {
  const hint = need.hint === "" ? "" : ` (${need.hint})`;
  switch (need.kind) {
    case "quantity":
    case "quantity-list":
      return `${need.term.name}, in ${UNIT_SYMBOL[need.term.unit] || "plain number"}${need.kind === "quantity-list" ? ", repeat for several" : ""}${hint}`;
    case "word":
    case "word-list":
    case "rcd-tests":
      return `${need.matter.name}: ${need.words.join(", ")}${hint}`;
    case "yes-no":
      return `${need.matter.name}: yes, no${hint}`;
  }
}

function exampleWords(id: string, given: Readonly<Record<string, string | readonly string[]>>): string {
  const pairs = Object.entries(given).flatMap(([name, value]) =>
    [value].flat().map((one) => `${givenName(name)}="${one}"`),
  );
  return `goodgrounds compute ${id} ${pairs.join(" ")}`;
}

/** Names that share a word with what was asked for. */
function nearest(name: string): string {
  const words = name
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word.length > 2);
  const close = [...COMPUTATIONS.keys()].filter((id) => words.some((word) => id.includes(word))).slice(0, 5);
  return close.length === 0
    ? " `goodgrounds compute --list` shows what there is."
    : ` Did you mean ${close.join(", ")}?`;
}
