import { fact, factNotKnown, isKnownFact, type Judgement, matter } from "@good-grounds/core";
import { keyOf, type SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty } from "../property.ts";

const DISCONNECT = matter("circuits-disconnect", "disconnection in time on every circuit of the installation");

/**
 * Whether an earth fault is disconnected in time on every circuit of the installation: yes where the check of each is
 * proven to be met and no circuit is left out of the lists, no where one is not met. Of which circuit or board is spoken
 * makes no difference.
 */
export const circuitsDisconnect: RecordedProperty = Object.freeze({
  id: "circuits-disconnect",
  name: DISCONNECT.name,
  values: ["yes", "no"],
  read({ installation, weighing }: SpokenOf) {
    const { circuits, boards, boardsListed } = installation;
    const said = circuits.map((circuit, i) => ({ circuit, judgement: disconnection(weighing.circuits[i]) }));
    const without = said.find(({ judgement }) => judgement?.verdict === "not-met")?.circuit;
    if (without !== undefined) {
      const words = `not on ${without.designation} ${without.description}`.trim();
      const leaf = fact(DISCONNECT, false, [...without.path, "readings"], words, "measured");
      return [{ of: without.path, leaf, values: ["no"] }];
    }
    const areAll = isKnownFact(boardsListed) && boards.every(({ circuitsListed }) => isKnownFact(circuitsListed));
    const isSo = areAll && said.length > 0 && said.every(({ judgement }) => isProven(judgement));
    const path = ["boards"];
    if (!isSo) return [{ of: path, leaf: factNotKnown(DISCONNECT, path), values: [] }];
    const words = said.length === 1 ? "its one circuit" : `all ${said.length} circuits`;
    return [{ of: path, leaf: fact(DISCONNECT, true, path, words, "measured"), values: ["yes"] }];
  },
});

/** What the check of disconnection says of a circuit, among its findings. */
function disconnection(findings: SpokenOf["weighing"]["circuits"][number] | undefined): Judgement | undefined {
  return findings?.find(({ check }) => check === "maximum-zs")?.judgement;
}

/** The same of one circuit of the installation. */
export function disconnectionOf(
  path: readonly (string | number)[],
  { installation, weighing }: SpokenOf,
): Judgement | undefined {
  return disconnection(weighing.circuits[installation.circuits.findIndex((one) => keyOf(one.path) === keyOf(path))]);
}

export function isProven(judgement: Judgement | undefined): boolean {
  return judgement?.verdict === "met" && judgement.grade === "proven";
}
