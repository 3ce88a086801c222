import { type Evidence, type Fact, type Finding, isKnown, isKnownFact, type Unit } from "@good-grounds/core";
import type { Circuit, Installation, ResidualDevice } from "@good-grounds/inspection";
import { rcdsOf } from "./rcds-of.ts";

type Leaf = Evidence<Unit> | Fact<string | boolean>;

/** The reading that a check of a circuit holds against a limit. */
const OF_A_CIRCUIT: Readonly<Record<string, (circuit: Circuit) => Leaf>> = {
  "maximum-zs": ({ readings }) => readings.zs,
  "insulation-resistance": ({ readings }) => readings.insulationLiveEarth,
};

const OF_AN_RCD: Readonly<Record<string, (rcd: ResidualDevice) => Leaf>> = {
  "rcd-time": ({ timeAtRated }) => timeAtRated,
};

const OF_THE_ORIGIN: Readonly<Record<string, (installation: Installation) => Leaf>> = {
  electrode: ({ supply }) => supply.ra,
};

/**
 * Whether a reading was taken that nobody can say is good: the finding is not known although its reading is there, for
 * what its limit rests on is not recorded. One that was not taken is told as a test that is not recorded.
 */
export function isNotHeld({ check, path, judgement }: Finding, installation: Installation): boolean {
  if (judgement.verdict !== "not-known") return false;
  const leaf = readingOf(check, path.join("/"), installation);
  return (
    leaf !== undefined && (leaf.kind === "fact" || leaf.kind === "fact-not-known" ? isKnownFact(leaf) : isKnown(leaf))
  );
}

function readingOf(check: string, key: string, installation: Installation): Leaf | undefined {
  const at = <T extends { readonly path: Finding["path"] }>(things: readonly T[]) =>
    things.find(({ path }) => path.join("/") === key);
  const circuit = at(installation.circuits);
  if (circuit !== undefined) return OF_A_CIRCUIT[check]?.(circuit);
  const rcd = at(rcdsOf(installation));
  if (rcd !== undefined) return OF_AN_RCD[check]?.(rcd);
  return OF_THE_ORIGIN[check]?.(installation);
}
