import {
  type Fact,
  fact,
  factNotKnown,
  isKnown,
  isKnownFact,
  type Matter,
  matter,
  type Path,
} from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import type { SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty, Recording } from "../property.ts";
import { ADDITIONAL, type AskedRcd, behindRcd } from "./behind-rcd.ts";

/** The answer that one circuit gives: yes or no, open where that is not known, or none where it is not of those asked about. */
type Said = "yes" | "no" | "open" | "apart";

const LARGER: AskedRcd = Object.freeze({ most: 0.1 });
const AGAINST_FIRE: AskedRcd = Object.freeze({ most: 0.3 });
/** Rated current up to which a circuit of socket-outlets is asked for 30 mA, in A. */
const UP_TO = 32;

/**
 * Whether every circuit of socket-outlets of the place is behind an RCD that works: of 30 mA or less where it is rated up
 * to 32 A, of 100 mA or less where it is larger.
 */
export const socketsBehindRcds = overCircuits(
  matter("sockets-behind-rcds", "working RCDs of 30 mA before sockets up to 32 A, of 100 mA before larger ones"),
  (circuit) => {
    const has = hasSockets(circuit);
    if (has === "no") return "apart";
    const said = asSockets(circuit);
    if (has === "open") return said === "yes" ? "apart" : "open";
    return said;
  },
);

/** Whether every circuit of the place other than those of socket-outlets is behind an RCD of 300 mA or less that works. */
export const othersBehindRcds = overCircuits(
  matter("others-behind-rcds", "working RCDs of 300 mA or less before all circuits but those of sockets"),
  (circuit) => {
    const has = hasSockets(circuit);
    if (has === "yes") return "apart";
    const said = behindRcd(circuit, AGAINST_FIRE);
    if (has === "open") return said === "yes" ? "apart" : "open";
    // Boards that it feeds may have theirs, and what it is itself protected by is not recorded as a kind of its own.
    return isDistribution(circuit) && said === "no" ? "open" : said;
  },
);

function asSockets(circuit: Circuit): Exclude<Said, "apart"> {
  const { rated } = circuit.device;
  if (isKnown(rated) && rated.high <= UP_TO) return behindRcd(circuit, ADDITIONAL);
  const larger = behindRcd(circuit, LARGER);
  if (isKnown(rated) && rated.low > UP_TO) return larger;
  return larger === "no" ? "no" : behindRcd(circuit, ADDITIONAL) === "yes" ? "yes" : "open";
}

/** Whether a circuit has socket-outlets. Cookers often have one at their switch, and what is mixed may have any. */
function hasSockets(circuit: Circuit): "yes" | "no" | "open" {
  const { load, socketOutlets } = circuit;
  if (isDistribution(circuit)) return "no";
  const byLoad = !isKnownFact(load)
    ? "open"
    : load.word === "socket-outlets"
      ? "yes"
      : load.word === "mixed" || load.word === "cooker"
        ? "open"
        : "no";
  if (!isKnownFact(socketOutlets)) return byLoad;
  if (socketOutlets.word) return "yes";
  return byLoad === "yes" ? "open" : "no";
}

function isDistribution({ load, shape }: Circuit): boolean {
  return (isKnownFact(load) && load.word === "board") || (isKnownFact(shape) && shape.word === "distribution");
}

/**
 * A property over the circuits of the place that an observation speaks of. Of a board, all have to say yes, and one that
 * says no is enough. One circuit can only say no: it says nothing of the others. Of the whole installation only a yes of
 * all counts: a circuit without may be of another building. A list that is not complete leaves a yes open.
 */
function overCircuits(about: Matter, say: (circuit: Circuit) => Said): RecordedProperty {
  return Object.freeze({
    id: about.id,
    name: about.name,
    values: ["yes", "no"],
    read: (spoken: SpokenOf): readonly Recording[] => {
      const place = placeOf(spoken);
      if (place === undefined) return [];
      const { of, leaf } = together(about, place, say);
      return [{ of, leaf, values: isKnownFact(leaf) ? [leaf.word ? "yes" : "no"] : [] }];
    },
  });
}

interface CircuitsOfPlace {
  readonly path: Path;
  readonly circuits: readonly Circuit[];
  /** Whether these are all the circuits that are asked about. */
  readonly areAll: boolean;
  /** Whether each of them is one that is asked about. */
  readonly areOfIt: boolean;
}

function placeOf({ installation, place, board, circuit }: SpokenOf): CircuitsOfPlace | undefined {
  if (circuit !== undefined) return { path: circuit.path, circuits: [circuit], areAll: false, areOfIt: true };
  if (place.circuit !== undefined) return undefined;
  if (board !== undefined) {
    const { path, circuits, circuitsListed } = board;
    return { path, circuits, areAll: isKnownFact(circuitsListed), areOfIt: true };
  }
  if (place.board !== undefined) return undefined;
  return { path: ["boards"], circuits: installation.circuits, areAll: allListed(installation), areOfIt: false };
}

function allListed({ boards, boardsListed }: Installation): boolean {
  return isKnownFact(boardsListed) && boards.every(({ circuitsListed }) => isKnownFact(circuitsListed));
}

function together(
  about: Matter,
  { path, circuits, areAll, areOfIt }: CircuitsOfPlace,
  say: (circuit: Circuit) => Said,
): { readonly of: Path; readonly leaf: Fact<boolean> } {
  const said = circuits.map((circuit) => ({ circuit, says: say(circuit) })).filter(({ says }) => says !== "apart");
  const without = areOfIt ? said.find(({ says }) => says === "no")?.circuit : undefined;
  if (without !== undefined) {
    const words = `none that works before ${without.designation} ${without.description}`.trim();
    return { of: without.path, leaf: fact(about, false, [...without.path, "rcd"], words, "measured") };
  }
  const isSo = areAll && said.length > 0 && said.every(({ says }) => says === "yes");
  if (!isSo) return { of: path, leaf: factNotKnown(about, path) };
  const words = said.length === 1 ? "its one circuit" : `all ${said.length} circuits`;
  return { of: path, leaf: fact(about, true, path, `${words}, tested in time`, "measured") };
}
