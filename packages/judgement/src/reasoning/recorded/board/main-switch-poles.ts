import { ofBoard } from "../of-things.ts";
import { worded } from "../property.ts";

/** How many poles the main switch of the board opens. */
export const mainSwitchPoles = worded("main-switch-poles", "poles of the main switch", ["1", "2", "3", "4"], (spoken) =>
  ofBoard(spoken, (board) => board.mainSwitchPoles),
);
