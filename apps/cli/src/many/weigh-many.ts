import { once } from "node:events";
import { EXIT, type ExitCode, type Host } from "../host.ts";
import { summariesOf } from "./pool.ts";
import type { Item } from "./sources.ts";
import type { SummaryOptions } from "./summary.ts";

/** How often the progress line is drawn, in items. */
const PROGRESS_STEP = 200;

/** Weighs many inspections, a line each, in order. Wrong ones are reported and do not stop the rest. */
export async function weighMany(items: AsyncIterable<Item>, options: SummaryOptions, host: Host): Promise<ExitCode> {
  let weighed = 0;
  let wrong = 0;
  let unreadable = 0;
  for await (const { out, problem, note = "", ...more } of summariesOf(items, options)) {
    weighed += 1;
    if (problem !== "") {
      wrong += 1;
      if (more.unreadable === true) unreadable += 1;
      host.stderr.write(problem);
    }
    if (note !== "") host.stderr.write(note);
    if (out !== "" && !host.stdout.write(out)) await once(host.stdout, "drain");
    if (host.interactive && weighed % PROGRESS_STEP === 0)
      host.stderr.write(`\r${weighed} weighed, ${wrong} with problems`);
  }
  if (host.interactive && weighed >= PROGRESS_STEP) host.stderr.write(`\r${weighed} weighed, ${wrong} with problems\n`);
  if (weighed === 0) {
    host.stderr.write("weigh: nothing to weigh: no inspection file in what was named.\n");
    return EXIT.input;
  }
  // Wrong input is named before what could not be read: it is what somebody has to mend.
  return wrong > unreadable ? EXIT.input : wrong > 0 ? EXIT.unreadable : EXIT.done;
}
