import { ofBoard } from "../of-things.ts";
import { worded } from "../property.ts";

/** Whether RCDs that serve several circuits are recorded in the board; a list that is left out leaves it open. */
export const boardRcds = worded("board-rcds", "RCDs listed in the board", ["none", "one", "several"], (spoken) =>
  ofBoard(spoken, ({ rcdsListed }) => rcdsListed),
);
