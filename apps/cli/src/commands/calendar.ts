import { assemble } from "@good-grounds/assembly";
import { DUTY, dutyCalendar, issuedAt } from "@good-grounds/report";
import { CALENDAR, guardedOutput } from "../guarded-output.ts";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";
import { readInspection } from "../inspection.ts";
import { readText } from "../read.ts";
import { topicsIn } from "../topics-in.ts";
import { issueLines } from "../words.ts";
import { writeWhole } from "../write-whole.ts";

interface CalendarOptions {
  readonly out: string | undefined;
  /** The firm's own folder of topics and standing views. */
  readonly topics: string | undefined;
  /** Every word of the command line but the output: none of the files they name is written over. */
  readonly given: readonly string[];
}

/** `goodgrounds calendar`: what the law asks, with dates, as an iCalendar file. */
export async function calendarCommand(
  paths: readonly string[],
  { out, topics: folder, given }: CalendarOptions,
  host: Host,
): Promise<ExitCode> {
  const [path, ...more] = paths;
  if (path === undefined || more.length > 0) throw new Stop(EXIT.input, "calendar: name one inspection file.");
  if (out === undefined || out === "") throw new Stop(EXIT.input, "calendar: say where to write it with --out PATH.");
  const target = await guardedOutput(out, given, CALENDAR);
  const topics = topicsIn(folder);
  const parsed = readInspection(await readText(path), topics);
  if (!parsed.ok) {
    host.stderr.write(issueLines(path, parsed.issues));
    return EXIT.input;
  }
  const { installation, duties } = assemble(parsed.file, false, topics);
  const calendar = dutyCalendar({
    id: parsed.file.id,
    address: installation.address.join(", "),
    issued: issuedAt(parsed.file),
    duties,
  });
  if (calendar === undefined) {
    host.stderr.write(`${path}: ${DUTY.calendar.nothing}\n`);
    return EXIT.done;
  }
  await writeWhole(target, calendar);
  host.stdout.write(`${target}\n`);
  return EXIT.done;
}
