/** Reasoning about topics: time in a browser, and side by side with two general rule engines on the same rules. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Compiled, compile, type Expression, reason } from "@good-grounds/core";
import { TOPICS } from "@good-grounds/topics";
import { build } from "esbuild";
import { Engine, type NestedCondition } from "json-rules-engine";
import { median, type Row } from "./measure.ts";

const ROUNDS = 2000;

interface PageFigure {
  readonly topic: string;
  readonly variables: number;
  readonly nodes: number;
  readonly median: number;
  readonly worst: number;
  readonly blank: number;
}

/** The largest topics in headless Chromium. */
export async function benchReasoningInBrowser(): Promise<readonly Row[]> {
  const folder = mkdtempSync(join(tmpdir(), "reasoning-"));
  try {
    const bundle = await build({
      entryPoints: [new URL("reasoning-page.ts", import.meta.url).pathname],
      bundle: true,
      format: "iife",
      write: false,
      minify: true,
    });
    const page = join(folder, "page.html");
    writeFileSync(page, `<!doctype html><body><script>${bundle.outputFiles[0]?.text ?? ""}</script>`);
    const dom = execFileSync(
      "chromium",
      [
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-background-networking",
        `--user-data-dir=${join(folder, "profile")}`,
        "--virtual-time-budget=60000",
        "--dump-dom",
        `file://${page}`,
      ],
      { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] },
    );
    const text = /<body>(.*)<\/body>/s.exec(dom)?.[1] ?? "[]";
    const figures = JSON.parse(text.replaceAll("&lt;", "<").replaceAll("&amp;", "&")) as readonly PageFigure[];
    return figures.flatMap(({ topic, variables, nodes, median: middle, worst, blank }) => [
      {
        what: `${topic}: ${variables} facts and points, ${nodes} nodes; possible set, next question, deciding facts, median`,
        value: middle,
        unit: "ms",
        target: 5,
      },
      { what: "the same, slowest of 400", value: worst, unit: "ms" },
      { what: "everything with nothing known, first time", value: blank, unit: "ms" },
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The rules of the largest topic under full assignments: one evaluation of every layer, route and departure. */
export async function benchRuleEngines(): Promise<readonly Row[]> {
  const compiled = TOPICS.map((topic) => compile(topic)).reduce((a, b) =>
    b.variables.length > a.variables.length ? b : a,
  );
  const situations = situationsOf(compiled);
  const ours = timed(() => {
    let sum = 0;
    for (const values of situations) sum += compiled.diagram.at(compiled.root, values);
    return sum;
  });
  const whole =
    timed(() => {
      let sum = 0;
      for (const values of situations.slice(0, 100))
        sum += reason(compiled, { masks: values.map((value) => 1 << value), beyond: new Set(), grounds: new Map() })
          .possible.length;
      return sum;
    }) *
    (ROUNDS / 100);
  const engine = engineOf(compiled);
  const started = performance.now();
  for (const values of situations) await engine.run(factsOf(compiled, values));
  const rules = ((performance.now() - started) * 1000) / situations.length;
  const prolog = prologTime(compiled, situations);
  return [
    { what: `${compiled.subject.id}: decision diagram, full assignment`, value: ours, unit: "µs" },
    {
      what: "the whole line of reasoning, with deciding facts and argument",
      value: whole,
      unit: "µs",
      ratio: whole / ours,
    },
    { what: "json-rules-engine, the same rules", value: rules, unit: "µs", ratio: rules / ours },
    ...(prolog === undefined
      ? []
      : [{ what: "SWI-Prolog, the same rules", value: prolog, unit: "µs", ratio: prolog / ours }]),
  ];
}

function situationsOf({ variables }: Compiled): readonly (readonly number[])[] {
  let state = 7671;
  const random = (below: number) => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
  return Array.from({ length: ROUNDS }, () => variables.map(({ cells }) => random(cells.values.length)));
}

function timed(run: () => number): number {
  const times = Array.from({ length: 9 }, () => {
    const start = performance.now();
    for (let i = 0; i < 20; i++) run();
    return ((performance.now() - start) * 1000) / (20 * ROUNDS);
  });
  return median(times);
}

function rulesOf({ subject }: Compiled): readonly (readonly [string, Expression])[] {
  return [
    ...subject.paths.flatMap(({ id, exists, layers }) => [
      [`${id}-exists`, exists] as const,
      ...layers.flatMap(({ id: layer, gone, sound }) => [
        [`${id}-${layer}-gone`, gone] as const,
        [`${id}-${layer}-sound`, sound] as const,
      ]),
    ]),
    ...subject.departures.map(({ when }, i) => [`departure-${i}`, when] as const),
    ...(subject.dangers ?? []).map(({ id, when }) => [`danger-${id}`, when] as const),
  ];
}

/** A leaf of a rule as the variable and the numbers of the cells for which it holds. */
function leafOf(
  one: Compiled,
  rule: Expression,
): { readonly name: string; readonly values: readonly number[] } | undefined {
  if (rule.op === "is" || rule.op === "held" || rule.op === "at-least" || rule.op === "more-than") {
    const key = rule.op === "held" ? `point ${rule.point}` : `fact ${rule.fact}`;
    const { cells } = one.variables[one.index.get(key) as number] as Compiled["variables"][number];
    if ("limit" in rule) return { name: key, values: cells.beyond?.(rule.op, rule.limit) ?? [] };
    const words: readonly string[] = rule.op === "held" ? [rule.position] : rule.values;
    return { name: key, values: words.map((word) => cells.values.indexOf(word)) };
  }
  return undefined;
}

function engineOf(one: Compiled): Engine {
  const engine = new Engine([], { allowUndefinedFacts: false });
  const condition = (rule: Expression): NestedCondition => {
    if (rule.op === "always") return { fact: "true", operator: "equal", value: 1 };
    if (rule.op === "never") return { fact: "true", operator: "equal", value: 0 };
    if (rule.op === "all") return { all: rule.of.map(condition) };
    if (rule.op === "any") return { any: rule.of.map(condition) };
    if (rule.op === "not") return { not: condition(rule.of) };
    const leaf = leafOf(one, rule);
    return { fact: leaf?.name ?? "", operator: "in", value: leaf?.values ?? [] };
  };
  for (const [name, rule] of rulesOf(one))
    engine.addRule({ conditions: { all: [condition(rule)] }, event: { type: name } });
  return engine;
}

function factsOf({ variables }: Compiled, values: readonly number[]): Record<string, number> {
  return Object.fromEntries([
    ["true", 1],
    ...variables.map(({ kind, name }, i) => [`${kind} ${name}`, values[i] as number]),
  ]);
}

/** Microseconds an evaluation takes in SWI-Prolog, by its own clock; undefined where it is not installed. */
function prologTime(one: Compiled, situations: readonly (readonly number[])[]): number | undefined {
  const atom = (text: string) => `'${text.replaceAll("'", "''")}'`;
  const numbers = new Map(one.variables.map(({ kind, name }, i) => [`${kind} ${name}`, i + 1]));
  const goal = (rule: Expression): string => {
    if (rule.op === "always") return "true";
    if (rule.op === "never") return "fail";
    if (rule.op === "all") return rule.of.length === 0 ? "true" : `(${rule.of.map(goal).join(", ")})`;
    if (rule.op === "any") return rule.of.length === 0 ? "fail" : `(${rule.of.map(goal).join("; ")})`;
    if (rule.op === "not") return `\\+ ${goal(rule.of)}`;
    const leaf = leafOf(one, rule);
    return `(arg(${numbers.get(leaf?.name ?? "") ?? 0}, S, V${numbers.get(leaf?.name ?? "") ?? 0}), memberchk(V${numbers.get(leaf?.name ?? "") ?? 0}, [${leaf?.values.join(",") ?? ""}]))`;
  };
  const rules = rulesOf(one);
  const program = [
    ...rules.map(([name, rule]) => `holds(${atom(name)}, S) :- once(${goal(rule)}).`),
    ...situations.map((values) => `situation(s(${values.join(",")})).`),
    `names([${rules.map(([name]) => atom(name)).join(",")}]).`,
    "all :- names(Ns), forall(situation(S), forall(member(N, Ns), (holds(N, S) -> true ; true))).",
    "main :- all, statistics(cputime, A), all, all, all, statistics(cputime, B), T is (B - A) / 3, write(T), nl, halt.",
  ].join("\n");
  const folder = mkdtempSync(join(tmpdir(), "rules-"));
  try {
    const file = join(folder, "rules.pl");
    writeFileSync(file, program);
    const seconds = Number(
      execFileSync("swipl", ["-q", "-O", "-g", "main", file], {
        encoding: "utf8",
        stdio: ["ignore", "pipe", "ignore"],
      }).trim(),
    );
    return (seconds * 1e6) / situations.length;
  } catch {
    return undefined;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
