import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { SHELL } from "../../words/shell.ts";

/** How many boards and circuits are drawn. */
export function installationHowFar(record: JobRecord): HowFar {
  const boards = membersOf(record, "boards");
  if (boards.length === 0) return { words: SHELL.nothingYet, done: false };
  const circuits = boards.reduce((count, board) => count + membersOf(record, `boards/${board}/circuits`).length, 0);
  return { words: INSTALLATION.count(boards.length, circuits), done: circuits > 0 };
}
