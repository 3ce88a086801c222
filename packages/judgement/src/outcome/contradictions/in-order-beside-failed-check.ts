import type { ItemId } from "@good-grounds/inspection";
import { followFrom, isCause } from "../same-cause.ts";
import type { ContradictionRow } from "./row.ts";
import { ticked } from "./ticked.ts";

/** Checks that an item of the inspection asks about as well. */
const ASKED_TWICE: readonly { readonly item: ItemId; readonly checks: readonly string[] }[] = [
  { item: "intake.polarity", checks: ["supply-polarity"] },
  { item: "earthing.electrode", checks: ["electrode"] },
  { item: "earthing.conductor", checks: ["earthing-conductor-size"] },
  { item: "earthing.main-bonding", checks: ["bonding-size", "bonding-continuity"] },
  { item: "boards.rcd", checks: ["rcd-time"] },
  { item: "boards.devices", checks: ["breaking-capacity"] },
  { item: "circuits.additional-protection", checks: ["additional-protection"] },
  { item: "circuits.protection", checks: ["maximum-zs"] },
  { item: "circuits.capacity", checks: ["cable-capacity"] },
];

/** An item in order, and a check of the same matter that is not met. */
export const IN_ORDER_BESIDE_FAILED_CHECK: ContradictionRow = {
  id: "in-order-beside-failed-check",
  find: ({ installation, weighing: { supply, boards, circuits } }) => {
    const notMet = [...supply, ...boards.flat(), ...circuits.flat()].filter(
      ({ judgement }) => judgement.verdict === "not-met",
    );
    // What fails because something else does is no fault of the thing that the item asks about.
    const caused = new Set(notMet.filter(isCause).flatMap((cause) => followFrom(cause, notMet, installation)));
    const failed = notMet.filter((finding) => !caused.has(finding));
    return ASKED_TWICE.flatMap(({ item, checks }) => {
      const tick = ticked(installation, item, "in-order");
      if (tick === undefined) return [];
      return checks.flatMap((check) => {
        const places = failed.filter((finding) => finding.check === check).map(({ path }) => path);
        return places.length === 0 ? [] : [{ places: [tick.path, ...places], reason: tick.reason, check }];
      });
    });
  },
};
