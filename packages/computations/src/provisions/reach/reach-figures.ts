import { type Evidence, type Known, notKnown, type Published, published, TERM } from "@good-grounds/core";
import { armsReach, objectProtection, type ReachDirection } from "@good-grounds/tables";
import { fromScene } from "./leaf.ts";

const row = (direction: ReachDirection): Published<"metre"> => {
  const { metres, measured, source } = armsReach(direction);
  return published(TERM.armsReach, metres, source, `${direction}: ${measured}`);
};

/** The figures of arm's reach as leaves, m. */
export const FIGURES = Object.freeze({
  upward: row("upward"),
  sideways: row("sideways"),
  below: row("below-edge"),
  between: row("between-parts"),
});

/** A gap no finger passes, m: the test object of IP2X. */
export const GAP = (objectProtection(2).diameter ?? 0) / 1000;

/** Arm's reach in its directions for one length of things handled, m. */
export interface Reach {
  readonly upward: number;
  readonly sideways: number;
  readonly below: number;
  readonly between: number;
}

/** Arm's reach with a long thing in the hand: every distance grows by its whole length (417.3.4, on the safe side). */
export function reachWith(objects: number): Reach {
  return {
    upward: FIGURES.upward.value + objects,
    sideways: FIGURES.sideways.value + objects,
    below: FIGURES.below.value + objects,
    between: FIGURES.between.value + objects,
  };
}

/** The length of what is handled as evidence, exact as stated. */
export function handledLength(objects: number | null): Evidence<"metre"> {
  if (objects === null) return notKnown(TERM.handledLength, ["objects"]);
  return fromScene(TERM.handledLength, objects, objects, objects, ["objects"]);
}

/** The least it can be where it is not known: what lies within bare arm's reach stays there whatever is handled. */
export const BARE_HAND: Known<"metre"> = fromScene(TERM.handledLength, 0, 0, Number.POSITIVE_INFINITY, ["objects"]);
