import type { Classification, Expression, HarmPath, Subject } from "@good-grounds/core";
import { MOST_CHANGED, PRICE } from "@good-grounds/core";
import { everything } from "./random-knowledge.ts";
import { holdsIn, type Known, severityIn, type Value, type World, worldsOf, worldsThatCanBe } from "./twin.ts";

/** What is known of a subject, and what follows, found by trying every completion. */
export class Twin {
  readonly subject: Subject;
  readonly known: Known;
  readonly full: Known;

  constructor(subject: Subject, known: Known) {
    this.subject = subject;
    this.known = known;
    this.full = everything(subject);
  }

  with(change: Known): Twin {
    return new Twin(this.subject, { ...this.known, ...change });
  }

  get facts(): readonly string[] {
    return Object.keys(this.known).filter((key) => key.startsWith("fact "));
  }

  /** Worlds that can be, or where what is said contradicts itself, those that it speaks of. */
  get worlds(): readonly World[] {
    const possible = worldsThatCanBe(this.subject, this.known);
    return possible.length > 0 ? possible : worldsOf(this.known);
  }

  get isContradicted(): boolean {
    return worldsThatCanBe(this.subject, this.known).length === 0;
  }

  severities(worlds: readonly World[]): readonly number[] {
    return ascending(worlds.map((world) => severityIn(this.subject, world)));
  }

  /** The fewest facts that have to be taken as not known for the rest to be true together: every such choice. */
  withdrawals(): readonly { readonly facts: readonly string[]; readonly possible: readonly number[] }[] {
    if (!this.isContradicted) return [];
    const stated = this.facts.filter((key) => this.known[key]?.length !== this.full[key]?.length);
    const found: string[][] = [];
    for (const some of subsets(stated))
      if (!found.some((one) => one.every((key) => some.includes(key))) && !this.without(some).isContradicted)
        found.push(some);
    return found.map((facts) => ({ facts, possible: this.without(facts).possible() }));
  }

  private without(facts: readonly string[]): Twin {
    return this.with(Object.fromEntries(facts.map((key) => [key, this.full[key] as readonly Value[]])));
  }

  possible(): readonly number[] {
    if (!this.isContradicted) return this.severities(this.worlds);
    const readings = [this.severities(this.worlds), ...this.withdrawals().map(({ possible }) => possible)];
    const floor = Math.max(...readings.map(([least = 0]) => least));
    return ascending(readings.flat().filter((severity) => severity >= floor));
  }

  underAnyView(): readonly number[] {
    const points = Object.keys(this.known).filter((key) => key.startsWith("point "));
    const views = worldsOf(Object.fromEntries(points.map((key) => [key, this.full[key] as readonly Value[]])));
    return ascending(
      views.flatMap((view) =>
        this.with(Object.fromEntries(Object.entries(view).map(([key, value]) => [key, [value]]))).possible(),
      ),
    );
  }

  /** Whether a rule holds in all worlds, in none, or in some. */
  truth(rule: Expression): "true" | "false" | "open" {
    const found = new Set(this.worlds.map((world) => holdsIn(rule, world)));
    return found.size === 2 ? "open" : found.has(true) ? "true" : "false";
  }

  layerStates({ gone, sound }: HarmPath["layers"][number]): readonly number[] {
    return ascending(this.worlds.map((world) => (holdsIn(gone, world) ? 0 : holdsIn(sound, world) ? 2 : 1)));
  }

  pathSeverities(path: HarmPath): readonly number[] {
    const alone = { ...this.subject, paths: [path], departures: [], dangers: [] };
    return ascending(this.worlds.map((world) => severityIn(alone, world)));
  }

  /**
   * Facts of `wanted` whose answer can change what is possible, after some answers to the facts of `asked`: found by
   * giving every such answer.
   */
  telling(wanted: readonly string[], asked: readonly string[]): readonly string[] {
    if (this.isContradicted) return [];
    return wanted.filter((key) => {
      const others = asked.filter((other) => other !== key);
      const before = Object.fromEntries(others.map((other) => [other, [null, ...(this.known[other] ?? [])]]));
      return worldsOf(before as unknown as Known).some((answers) => {
        const given = Object.entries(answers).filter(([, value]) => value !== null);
        const state = this.with(Object.fromEntries(given.map(([other, value]) => [other, [value]])));
        if (state.isContradicted) return false;
        const now = state.possible().join();
        return this.known[key]?.some((value) => {
          const after = state.with({ [key]: [value] });
          return !after.isContradicted && after.possible().join() !== now;
        });
      });
    });
  }

  /** What the cheapest way of asking costs on average, every world as likely as the next, until nothing more can be told. */
  leastPrice(askable: readonly string[]): number {
    if (this.isContradicted || this.telling(askable, askable).length === 0) return 0;
    return Math.min(...askable.map((key) => this.priceStarting(key, askable)));
  }

  priceStarting(key: string, askable: readonly string[]): number {
    const rest = askable.filter((other) => other !== key);
    const after = (this.known[key] ?? [])
      .map((value) => this.with({ [key]: [value] }))
      .filter((one) => !one.isContradicted);
    const worlds = after.reduce((sum, one) => sum + one.worlds.length, 0);
    const mean = after.reduce((sum, one) => sum + (one.worlds.length / worlds) * one.leastPrice(rest), 0);
    return PRICE[this.subject.facts[key.slice(5)]?.effort ?? "measured"] + mean;
  }

  /** The smallest changes of facts after which something is possible that `wanted` asks for. */
  changes(wanted: (severity: number) => boolean): readonly Known[] {
    const anyFact = this.with(Object.fromEntries(this.facts.map((key) => [key, this.full[key] as readonly Value[]])));
    const found = new Map<string, readonly (readonly [string, Value])[]>();
    for (const world of worldsThatCanBe(this.subject, anyFact.known)) {
      if (!wanted(severityIn(this.subject, world))) continue;
      const change = Object.entries(world).filter(([key, value]) => !this.known[key]?.includes(value));
      if (change.length <= MOST_CHANGED) found.set(change.join(), change);
    }
    const all = [...found.values()];
    const smallest = all.filter(
      (one) =>
        !all.some(
          (other) => other.length < one.length && other.every((pair) => one.join("|").split("|").includes(pair.join())),
        ),
    );
    return smallest.map((change) => Object.fromEntries(change.map(([key, value]) => [key, [value]])));
  }
}

/** How a line of reasoning ends. */
export function endingOf(possible: readonly number[], canAsk: boolean, isContradicted: boolean): string {
  if (isContradicted) return "contradicted";
  if (possible.length === 1) return "settled";
  if (canAsk) return "open";
  if (possible[0] === 2) return "at-least";
  return possible.includes(2) || possible.includes(3) ? "not-ruled-out" : "no-danger";
}

export function classificationOf(possible: readonly number[], ending: string): Classification | null {
  const least = (["none", "C3", "C2", "C1"] as const)[possible[0] ?? 0] ?? null;
  if (ending === "settled" || ending === "at-least") return least;
  if (ending === "not-ruled-out") return "FI";
  return ending === "contradicted" && (least === "C2" || least === "C1") ? least : null;
}

function ascending(numbers: readonly number[]): readonly number[] {
  return [...new Set(numbers)].sort((a, b) => a - b);
}

/** Every choice of some of the items, fewest first. */
function subsets(items: readonly string[]): readonly string[][] {
  const [first, ...rest] = items;
  if (first === undefined) return [[]];
  const without = subsets(rest);
  return [...without, ...without.map((some) => [first, ...some])].sort((a, b) => a.length - b.length);
}
