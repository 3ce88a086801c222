import { randomUUID } from "node:crypto";
import { realpath, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { assemble } from "@good-grounds/assembly";
import { readEarlier, withEarlier } from "../earlier.ts";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";
import { readInspection } from "../inspection.ts";
import { readText, reason } from "../read.ts";
import { issueLines } from "../words.ts";

/** `goodgrounds report`: the condition report as PDF with the inspection file attached. */
export async function reportCommand(
  paths: readonly string[],
  out: string | undefined,
  host: Host,
  earlier: readonly string[] = [],
): Promise<ExitCode> {
  const [path, ...more] = paths;
  if (path === undefined || more.length > 0) throw new Stop(EXIT.input, "report: name one inspection file.");
  if (out === undefined || out === "") throw new Stop(EXIT.input, "report: say where to write it with --out PATH.");
  const target = await targetOf(out, path);
  const text = await readText(path);
  const parsed = readInspection(text);
  if (!parsed.ok) {
    host.stderr.write(issueLines(path, parsed.issues));
    return EXIT.input;
  }
  const { writeReportPdf } = await import("@good-grounds/report/pdf");
  const input = withEarlier(assemble(parsed.file, true), await readEarlier(earlier, parsed.file, host));
  const pdf = writeReportPdf(input, { json: text });
  await writeWhole(target, pdf);
  host.stdout.write(`${target}\n`);
  return EXIT.done;
}

/** The file to write. A link is followed. What is no file is refused, and so is the inspection itself: it is the original. */
async function targetOf(out: string, source: string): Promise<string> {
  const there = (name: string) => realpath(name).catch(() => resolve(name));
  const target = await there(out);
  if (target === (await there(source)))
    throw new Stop(EXIT.input, `${out}: is the inspection file itself. Name another file for the report.`);
  const found = await stat(target).catch(() => undefined);
  if (found?.isDirectory() === true) throw new Stop(EXIT.input, `${target}: is a folder. Name the file to write.`);
  if (found?.isFile() === false)
    throw new Stop(EXIT.input, `${target}: is a device or a pipe, no file. Name the file to write.`);
  return target;
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
