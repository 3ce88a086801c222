import { ofBoard } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether the board has a main switch. */
export const mainSwitchFitted = stated("main-switch-fitted", "main switch in the board", (spoken) =>
  ofBoard(spoken, (board) => board.mainSwitchFitted),
);
