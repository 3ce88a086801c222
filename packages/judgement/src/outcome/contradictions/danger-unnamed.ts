import type { Path } from "@good-grounds/core";
import type { ItemGroupId } from "@good-grounds/inspection";
import type { ContradictionRow } from "./row.ts";

const OF_A_BOARD: readonly ItemGroupId[] = ["boards"];
const OF_A_CIRCUIT: readonly ItemGroupId[] = ["boards", "circuits", "accessories", "bathrooms", "outdoors"];
const OF_THE_ORIGIN: readonly ItemGroupId[] = ["intake", "earthing"];

/**
 * Danger at a board, a circuit or the origin that no item of the inspection names, where every item of that place that was
 * looked at is in order: by the schedule there is nothing, by the observation there is danger.
 */
export const DANGER_UNNAMED: ContradictionRow = {
  id: "danger-unnamed",
  find: ({ installation: { observations, inspected } }) => {
    const named = new Set(inspected.flatMap(({ observations: ids = [] }) => ids));
    return observations.flatMap(({ id, board, circuit, choice }, i) => {
      const isDanger = choice?.classification === "C1" || choice?.classification === "C2";
      if (!isDanger || named.has(id)) return [];
      const groups = circuit !== undefined ? OF_A_CIRCUIT : board !== undefined ? OF_A_BOARD : OF_THE_ORIGIN;
      const inOrder = inspected.flatMap(({ item, outcome }, j): Path[] =>
        outcome === "in-order" && groups.some((group) => item.startsWith(`${group}.`)) ? [["inspected", j]] : [],
      );
      return inOrder.length === 0 ? [] : [{ places: [["observations", i]] }];
    });
  },
};
