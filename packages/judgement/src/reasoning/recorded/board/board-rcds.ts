import { ofBoard } from "../file-leaves.ts";
import { worded } from "../property.ts";

/** Whether RCDs that serve several circuits are recorded in the board; a list that is left out leaves it open. */
export const boardRcds = worded("board-rcds", "RCDs listed in the board", ["none", "one", "several"], (spoken) =>
  ofBoard(spoken, "rcds", "RCDs listed in the board", ({ rcds }) =>
    rcds === undefined ? undefined : rcds.length === 0 ? "none" : rcds.length === 1 ? "one" : "several",
  ),
);
