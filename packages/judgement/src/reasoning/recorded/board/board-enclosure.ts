import { ofBoard } from "../of-things.ts";
import { worded } from "../property.ts";

/** What the enclosure of the board is made of. */
export const boardEnclosure = worded(
  "board-enclosure",
  "enclosure of the board",
  ["metal", "non-combustible", "combustible", "wood-backed"],
  (spoken) => ofBoard(spoken, ({ enclosure }) => enclosure),
);
