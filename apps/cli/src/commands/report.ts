import { randomUUID } from "node:crypto";
import { rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { parseInspection } from "@good-grounds/inspection";
import { assemble } from "../assemble.ts";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";
import { readText, reason } from "../read.ts";
import { issueLines } from "../words.ts";

/** `goodgrounds report`: the condition report as PDF with the inspection file attached. */
export async function reportCommand(paths: readonly string[], out: string | undefined, host: Host): Promise<ExitCode> {
  const [path, ...more] = paths;
  if (path === undefined || more.length > 0) throw new Stop(EXIT.input, "report: name one inspection file.");
  if (out === undefined) throw new Stop(EXIT.input, "report: say where to write it with --out PATH.");
  const text = await readText(path);
  const parsed = parseInspection(text);
  if (!parsed.ok) {
    host.stderr.write(issueLines(path, parsed.issues));
    return EXIT.input;
  }
  const target = resolve(out);
  await refuseFolder(target);
  const { writeReportPdf } = await import("@good-grounds/report/pdf");
  const pdf = writeReportPdf(assemble(parsed.file), { json: text });
  await writeWhole(target, pdf);
  host.stdout.write(`${target}\n`);
  return EXIT.done;
}

async function refuseFolder(target: string): Promise<void> {
  const found = await stat(target).catch(() => undefined);
  if (found?.isDirectory() === true) throw new Stop(EXIT.input, `${target}: is a folder. Name the file to write.`);
}

/** Writes beside the target and renames: whoever looks sees the old file or the new one, never half of one. */
async function writeWhole(target: string, bytes: Uint8Array): Promise<void> {
  const beside = join(dirname(target), `.${randomUUID()}.part`);
  try {
    await writeFile(beside, bytes, { flag: "wx" });
    await rename(beside, target);
  } catch (error) {
    await rm(beside, { force: true });
    throw new Stop(
      EXIT.unreadable,
      `${target}: cannot be written (${reason(error)}). Check that the folder exists and that you may write there.`,
    );
  }
}
