import { run } from "./run.ts";

// A reader that closes early (head, a pager) is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

process.exitCode = await run(process.argv.slice(2), {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  columns: process.stdout.columns,
  interactive: process.stderr.isTTY === true,
});
