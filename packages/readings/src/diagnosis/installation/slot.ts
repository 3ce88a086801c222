/** The readings of a circuit that its conductors and the loop before it settle. `fed` is Zdb of the board it feeds. */
export type Slot = "r1r2" | "r2" | "zs" | "fed" | "r1" | "rn" | "re";

const LIVE: ReadonlySet<Slot> = new Set(["zs", "fed"]);

export const isLive = (slot: Slot): boolean => LIVE.has(slot);
