import { assemble, draftWhereOpen } from "@good-grounds/assembly";
import type { ReportInput } from "@good-grounds/report";
import { readEarlier, withEarlier } from "../earlier.ts";
import { guardedOutput, HTML, PDF } from "../guarded-output.ts";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";
import { readInspection } from "../inspection.ts";
import { judgedWithNote } from "../judged-with.ts";
import { memoryNote } from "../memory-note.ts";
import { photographsIn } from "../photographs.ts";
import { readText } from "../read.ts";
import { topicsIn } from "../topics-in.ts";
import { issueLines } from "../words.ts";
import { writeWhole } from "../write-whole.ts";

export interface ReportOptions {
  readonly out: string | undefined;
  readonly earlier: readonly string[];
  /** A folder with the photographs of the inspection. */
  readonly photographs: string | undefined;
  /** The firm's own folder of topics and standing views. */
  readonly topics: string | undefined;
  /** Every word of the command line but the output: none of the files they name is written over. */
  readonly given: readonly string[];
}

/** `goodgrounds report`: the condition report as PDF with the inspection file attached; a draft while it cannot be issued. */
export async function reportCommand(
  paths: readonly string[],
  { out, earlier, photographs, topics: folder, given }: ReportOptions,
  host: Host,
): Promise<ExitCode> {
  const [path, ...more] = paths;
  if (path === undefined || more.length > 0) throw new Stop(EXIT.input, "report: name one inspection file.");
  if (out === undefined || out === "") throw new Stop(EXIT.input, "report: say where to write it with --out PATH.");
  const kind = /\.html?$/i.test(out) ? HTML : PDF;
  const target = await guardedOutput(out, given, kind);
  const text = await readText(path);
  const topics = topicsIn(folder);
  const parsed = readInspection(text, topics);
  if (!parsed.ok) {
    host.stderr.write(issueLines(path, parsed.issues));
    return EXIT.input;
  }
  host.stderr.write(judgedWithNote(path, parsed.file, topics));
  const { found, notes } = await photographsIn(photographs, parsed.file);
  host.stderr.write(notes.map((note) => `${note}\n`).join(""));
  const input = {
    ...draftWhereOpen(withEarlier(assemble(parsed.file, true, topics), await readEarlier(earlier, parsed.file, host))),
    photographs: found,
  };
  host.stderr.write(await memoryNote(path, input));
  const made = kind === HTML ? await page(input) : await pdf(input, text);
  // Laying out takes a while: what was put there meanwhile is guarded as well.
  if ((await guardedOutput(out, given, kind)) !== target)
    throw new Stop(EXIT.unreadable, `${out}: leads somewhere else than when the command began. Try again.`);
  await writeWhole(target, made);
  host.stdout.write(`${target}\n`);
  return EXIT.done;
}

async function page(input: ReportInput): Promise<string> {
  const { reportHtml } = await import("@good-grounds/report/pdf/document");
  return reportHtml(input);
}

async function pdf(input: ReportInput, json: string): Promise<Uint8Array> {
  const { writeReportPdf } = await import("@good-grounds/report/pdf");
  return writeReportPdf(input, { json });
}
