/** Identifiers of the inspection items, see the files beside this one for what each asks. */
export const ITEM_IDS = ["intake.cut-out", "intake.tails", "earthing.conductor", "board.enclosure"] as const;
