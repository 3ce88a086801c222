import type { Expression, Subject } from "@good-grounds/core";

/** A value of a fact or a position on a point; a quantity is a number of millimetres. */
export type Value = string | number;
/** One complete state of affairs, by "fact NAME" and "point NAME". */
export type World = Readonly<Record<string, Value>>;
/** The values that each fact and point may still have. */
export type Known = Readonly<Record<string, readonly Value[]>>;

/** Whether a rule holds in a world, read as it is written. */
export function holdsIn(rule: Expression, world: World): boolean {
  if (rule.op === "always" || rule.op === "never") return rule.op === "always";
  if (rule.op === "not") return !holdsIn(rule.of, world);
  if (rule.op === "state") throw new Error("the twin's subjects have no states");
  if (rule.op === "held") return world[`point ${rule.point}`] === rule.position;
  if ("of" in rule) {
    const holds = rule.of.map((one) => holdsIn(one, world));
    return rule.op === "all" ? !holds.includes(false) : holds.includes(true);
  }
  const value = world[`fact ${rule.fact}`] as Value;
  if (rule.op === "is") return rule.values.includes(String(value));
  const limit = Number.parseFloat(rule.limit);
  return rule.op === "at-least" ? Number(value) >= limit : Number(value) > limit;
}

/** 0 none, 1 C3, 2 C2, 3 C1: layers counted, departures and dangers looked at, the worst taken. */
export function severityIn({ paths, departures, dangers = [] }: Subject, world: World): number {
  const layersLeft = (path: Subject["paths"][number]) =>
    path.layers.reduce((n, l) => n + (holdsIn(l.gone, world) ? 0 : holdsIn(l.sound, world) ? 2 : 1), 0);
  const routes = paths.filter((path) => holdsIn(path.exists, world)).map(layersLeft);
  const short = departures.filter((one) => holdsIn(one.when, world));
  const danger = dangers.filter((one) => holdsIn(one.when, world));
  return Math.max(
    0,
    ...routes.map((left) => (left === 0 ? 3 : left === 1 ? 2 : 0)),
    ...short.map(() => 1),
    ...danger.map(({ least }) => (least === "C1" ? 3 : 2)),
  );
}

/** Every world that what is known leaves. */
export function worldsOf(known: Known): readonly World[] {
  return Object.entries(known).reduce<readonly World[]>(
    (worlds, [name, values]) => worlds.flatMap((world) => values.map((value) => ({ ...world, [name]: value }))),
    [{}],
  );
}

/** Whether some of what is said in a world cannot be true together. */
function contradictsItself({ contradictions = [] }: Subject, world: World): boolean {
  return contradictions.some(({ when }) => holdsIn(when, world));
}

/** The worlds that can be; none where what is known contradicts itself. */
export function worldsThatCanBe(subject: Subject, known: Known): readonly World[] {
  return worldsOf(known).filter((world) => !contradictsItself(subject, world));
}
