import type { Finding, Path, Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Place, SpokenOf } from "./spoken-of.ts";

/** What a finding is about, by its place in the file. */
type FindingOf = "supply" | "bond" | "board" | "rcd" | "circuit";

/** Of what kind of thing a finding speaks. */
function kindOf({ path }: Pick<Finding, "path">): FindingOf {
  if (path[0] === "supply") return path[1] === "bonding" ? "bond" : "supply";
  if (path[2] === "rcds" || path[4] === "rcd") return "rcd";
  return path[2] === "circuits" || path[0] === "circuits" ? "circuit" : "board";
}

/** Findings about the circuit an observation names, else about its board, else about the supply. */
export function findingsAt(
  { board, circuit }: Pick<Place, "board" | "circuit">,
  installation: Installation,
  weighing: Weighing,
): readonly Finding[] {
  if (circuit !== undefined) {
    const at = installation.circuits.findIndex((one) => one.id === circuit && one.board.id === board);
    return weighing.circuits[at] ?? [];
  }
  if (board !== undefined) return weighing.boards[installation.boards.findIndex(({ id }) => id === board)] ?? [];
  return weighing.supply;
}

/**
 * The findings about the things an observation speaks of, and about no others: of the RCDs and bonding conductors those
 * it may mean, wherever their findings stand in the weighing.
 */
export function findingsAbout(spoken: SpokenOf): readonly Finding[] {
  const { installation, weighing, place, rcds, bonds } = spoken;
  const at = findingsAt(place, installation, weighing).filter((finding) => !isOfPart(finding));
  if (rcds.length + bonds.length === 0) return at;
  const parts = new Set([...rcds, ...bonds].map(({ path }) => keyOf(path)));
  return [...at, ...partFindings(weighing).filter((finding) => parts.has(keyOf(finding.path)))];
}

const OF_PARTS = new WeakMap<Weighing, readonly Finding[]>();

/** The findings about RCDs and bonding conductors, in the order of the weighing; sought out once for all observations. */
function partFindings(weighing: Weighing): readonly Finding[] {
  const known =
    OF_PARTS.get(weighing) ??
    [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()].filter(isOfPart);
  OF_PARTS.set(weighing, known);
  return known;
}

function isOfPart(finding: Finding): boolean {
  const kind = kindOf(finding);
  return kind === "rcd" || kind === "bond";
}

/** The same for the same place in the file. */
export function keyOf(path: Path): string {
  return path.join("/");
}
