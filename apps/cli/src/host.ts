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
export const EXIT = Object.freeze({ done: 0, fault: 1, input: 2, unreadable: 3 } as const);
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Stops a command with a message and an exit code. */
export class Stop extends Error {
  readonly code: ExitCode;

  constructor(code: ExitCode, message: string) {
    super(message);
    this.code = code;
  }
}
