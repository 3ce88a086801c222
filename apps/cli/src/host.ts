import type { Readable, Writable } from "node:stream";

/** What a command needs of the world outside; tests give it their own. */
export interface Host {
  readonly stdin: Readable;
  readonly stdout: Writable;
  readonly stderr: Writable;
  /** Columns of the terminal, or undefined where output is not one. */
  readonly columns: number | undefined;
  /** Whether a progress line can be drawn over itself. */
  readonly interactive: boolean;
}

/** Exit codes; documented in docs/cli.md. */
export const EXIT = Object.freeze({ done: 0, fault: 1, input: 2, unreadable: 3, against: 4, open: 5 } as const);
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Stops a command with a message and an exit code. */
export class Stop extends Error {
  readonly code: ExitCode;

  constructor(code: ExitCode, message: string) {
    super(message);
    this.code = code;
  }
}

/** Columns to fill: 80 where nothing is known of the terminal or it says that it has none, and never so few or many that reading suffers. */
export function widthOf({ columns }: Pick<Host, "columns">): number {
  return columns === undefined || !(columns > 0) ? 80 : Math.min(Math.max(columns, 20), 100);
}
