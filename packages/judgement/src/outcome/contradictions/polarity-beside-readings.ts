import { isKnownFact } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import type { ContradictionRow } from "./row.ts";

/** Explanations that have line and neutral, or line and earth, the wrong way round. */
const REVERSED = /^(?:swapped|crossed|reversed)/;

/**
 * Polarity confirmed at circuits, and incorrect at the supply or the board before them; or readings of a circuit that are
 * explained best by conductors the wrong way round.
 */
export const POLARITY_BESIDE_READINGS: ContradictionRow = {
  id: "polarity-beside-readings",
  find: ({ installation: { circuits }, misfits }) => {
    const isConfirmed = ({ readings: { polarity } }: Circuit) => isKnownFact(polarity) && polarity.word === "correct";
    return misfits.flatMap(({ clear, kind, path, explanations: [lead] }) => {
      if (!clear) return [];
      const [head, board] = path;
      if (kind === "polarity") {
        const behind = circuits.filter((one) => (head === "supply" || one.path[1] === board) && isConfirmed(one));
        const check = head === "supply" ? { check: "supply-polarity" } : {};
        return [{ places: [path, ...behind.map((one) => one.path)], ...check }];
      }
      if (lead === undefined || !REVERSED.test(lead.id)) return [];
      const circuit = circuits.find((one) => one.path.join("/") === path.join("/"));
      return circuit !== undefined && isConfirmed(circuit) ? [{ places: [path] }] : [];
    });
  },
};
