/** The readings of a circuit that its conductors and the loop before it settle. `fed` is Zdb of the board it feeds. */
export type Slot = "r1r2" | "r2" | "zs" | "fed" | "r1" | "rn" | "re";

const LIVE: ReadonlySet<Slot> = new Set(["zs", "fed"]);

export const isLive = (slot: Slot): boolean => LIVE.has(slot);

/** As the schedule names them. */
export const NAME: Readonly<Record<Slot, string>> = {
  r1r2: "R1+R2",
  r2: "R2",
  zs: "Zs",
  fed: "Zdb of the board it feeds",
  r1: "r1",
  rn: "rn",
  re: "r2",
};
