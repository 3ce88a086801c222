import { EXIT, type ExitCode, type Host, Stop } from "../../host.ts";
import { changedCommand } from "./changed.ts";
import { checkCommand } from "./check.ts";
import { formatCommand } from "./format.ts";
import { showCommand } from "./show.ts";

export interface TopicsOptions {
  /** Warnings too. */
  readonly all: boolean;
  /** Say only what is not in its one spelling. */
  readonly check: boolean;
  readonly json: boolean;
  /** The firm's own folder, for `show`. */
  readonly topics: string | undefined;
}

const ACTIONS = { check: checkCommand, format: formatCommand, show: showCommand, changed: changedCommand };

/** `goodgrounds topics`: texts of topics, and a firm's own folder of them. */
export function topicsCommand(args: readonly string[], options: TopicsOptions, host: Host): ExitCode {
  const [action = "", subject, ...more] = args;
  if (!Object.hasOwn(ACTIONS, action))
    throw new Stop(
      EXIT.input,
      `topics: ${action === "" ? "nothing to do given" : `cannot ${JSON.stringify(action.slice(0, 40))}`}. Write topics check FOLDER, format FOLDER, changed FOLDER or show ID.`,
    );
  if (subject === undefined || more.length > 0)
    throw new Stop(EXIT.input, `topics ${action}: name one ${action === "show" ? "topic by its id" : "folder"}.`);
  return ACTIONS[action as keyof typeof ACTIONS](subject, options, host);
}
