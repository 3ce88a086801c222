import { ofBoard } from "../file-leaves.ts";
import { worded } from "../property.ts";

/** Whether a surge protective device is fitted in the board. */
export const surgeProtection = worded("surge-protection", "surge protection", ["fitted", "not-fitted"], (spoken) =>
  ofBoard(spoken, "surgeProtection", "surge protection", (board) => board.surgeProtection),
);
