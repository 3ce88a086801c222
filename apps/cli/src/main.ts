import { EXIT } from "./host.ts";
import { reason } from "./reason-of.ts";
import { run } from "./run.ts";

// A reader that closes early (head, a pager) is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(EXIT.done);
  process.stderr.write(`goodgrounds: the output cannot be written (${reason(error)}).\n`);
  process.exit(EXIT.unreadable);
});

process.exitCode = await run(process.argv.slice(2), {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  columns: process.stdout.columns,
  interactive: process.stderr.isTTY === true,
});
