import { residualsBefore } from "@good-grounds/computations";
import { type Fact, fact, factNotKnown, isKnownFact, type Judgement, type Matter, matter } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import { keyOf, type SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty, Recording } from "../property.ts";

/** What the check of disconnection says of a circuit, of its RCDs and of its fuse or breaker. */
interface Disconnection {
  readonly circuit: Circuit;
  readonly byRcd: "works" | "failed" | "absent" | "open";
  readonly byBreaker: "yes" | "no" | "open";
}

/**
 * What the RCDs do for an earth fault: that on the way to each circuit of the place one disconnects in time, or that of a
 * circuit none does, be it one that failed or that there is none. Where neither RCD nor fuse does for one circuit, it is
 * of that circuit that the place is spoken.
 */
export const rcdsDisconnect: RecordedProperty = over(
  matter("rcds-disconnect", "whether RCDs disconnect an earth fault"),
  ["works", "failed", "absent"],
  ({ byRcd }) => byRcd,
  { works: "an RCD does, tested in time", failed: "the RCD does not", absent: "there is no RCD" },
);

/** Whether the fuse or breaker by itself disconnects an earth fault in time; of the same circuit as the RCDs. */
export const breakersDisconnect: RecordedProperty = over(
  matter("breakers-disconnect", "whether the fuse or breaker alone disconnects an earth fault"),
  ["yes", "no"],
  ({ byBreaker }) => byBreaker,
  { yes: "it does", no: "it does not" },
);

function over(
  about: Matter,
  values: readonly string[],
  say: (one: Disconnection) => string,
  words: Readonly<Record<string, string>>,
): RecordedProperty {
  return Object.freeze({
    id: about.id,
    name: about.name,
    values,
    read: (spoken: SpokenOf): readonly Recording[] => {
      const place = placeOf(spoken);
      if (place === undefined) return [];
      const all = place.circuits.map((circuit) => disconnectionOf(circuit, spoken));
      const bare = all.find(({ byRcd, byBreaker }) => byBreaker === "no" && (byRcd === "failed" || byRcd === "absent"));
      const [first] = all;
      const said = bare ?? (place.areAll ? first : undefined);
      const value = said === undefined ? "open" : say(said);
      const isSo = value !== "open" && (bare !== undefined || all.every((one) => say(one) === value));
      if (said === undefined || !isSo) return [{ of: place.path, leaf: factNotKnown(about, place.path), values: [] }];
      return [
        leafOf(
          about,
          bare === undefined ? place.path : said.circuit.path,
          value,
          nameOf(said, bare, all.length, words[value] ?? value),
        ),
      ];
    },
  });
}

function leafOf(about: Matter, of: Circuit["path"], value: string, text: string): Recording {
  const leaf: Fact<string> = fact(about, value, [...of], text, "measured");
  return { of, leaf, values: [value] };
}

function nameOf({ circuit }: Disconnection, bare: Disconnection | undefined, count: number, words: string): string {
  if (bare === undefined && count > 1) return `on all ${count} circuits ${words}`;
  return `on ${`${circuit.designation} ${circuit.description}`.trim()} ${words}`;
}

interface CircuitsOfPlace {
  readonly path: Circuit["path"];
  readonly circuits: readonly Circuit[];
  /** Whether the place has no other circuits. */
  readonly areAll: boolean;
}

function placeOf({ installation, place, board, circuit }: SpokenOf): CircuitsOfPlace | undefined {
  if (circuit !== undefined) return { path: circuit.path, circuits: [circuit], areAll: true };
  if (place.circuit !== undefined) return undefined;
  if (board !== undefined)
    return { path: board.path, circuits: board.circuits, areAll: isKnownFact(board.circuitsListed) };
  if (place.board !== undefined) return undefined;
  const { boards, boardsListed, circuits } = installation;
  const areAll = isKnownFact(boardsListed) && boards.every(({ circuitsListed }) => isKnownFact(circuitsListed));
  return { path: ["boards"], circuits, areAll };
}

function disconnectionOf(circuit: Circuit, { installation, weighing }: SpokenOf): Disconnection {
  const at = installation.circuits.findIndex(({ path }) => keyOf(path) === keyOf(circuit.path));
  const settles = weighing.circuits[at]?.find(({ check }) => check === "maximum-zs")?.settles ?? [];
  const verdictOf = (id: string) => saysOf(settles.find(({ matter: { id: settled } }) => settled === id));
  const byRcd = verdictOf("residual-disconnects");
  const failed = residualsBefore(circuit).devices.length > 0 ? "failed" : "absent";
  return {
    circuit,
    byRcd: byRcd === "yes" ? "works" : byRcd === "no" ? failed : "open",
    byBreaker: verdictOf("overcurrent-disconnects"),
  };
}

function saysOf(judgement: Judgement | undefined): "yes" | "no" | "open" {
  if (judgement?.verdict === "not-met") return "no";
  return judgement?.verdict === "met" && judgement.grade === "proven" ? "yes" : "open";
}
