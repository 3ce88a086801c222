import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { assemble } from "@good-grounds/assembly";
import { RELEASE } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import {
  aboutInspection,
  fileNameOf,
  hashOf,
  type IssueRecord,
  issueName,
  newestOf,
  openKeyFile,
  readPublicKey,
  readRecord,
  standsIn,
} from "@good-grounds/issue";
import { issueDocument, type Signer, signerOf, signerOfP12, timeAuthorityAt } from "@good-grounds/issue/pdf";
import { type ReportInput, standingSignatures } from "@good-grounds/report";
import { readEarlier, withEarlier } from "../../earlier.ts";
import { guardedOutput } from "../../guarded-output.ts";
import { EXIT, type ExitCode, type Host, Stop } from "../../host.ts";
import { readInspection } from "../../inspection.ts";
import { memoryNote } from "../../memory-note.ts";
import { readBytes, readText } from "../../read.ts";
import { reason } from "../../reason-of.ts";
import { topicsIn } from "../../topics-in.ts";
import { issueLines } from "../../words.ts";
import { writeWhole } from "../../write-whole.ts";
import { ofFile } from "./faults.ts";
import { givenAt, registerOf } from "./given.ts";
import { momentNow } from "./moment.ts";
import { reasonsFor } from "./reasons.ts";
import { secretLine } from "./secret-line.ts";
import { writtenOnce } from "./written-once.ts";

interface IssueOptions {
  readonly certificate?: string;
  readonly draft: boolean;
  readonly earlier: readonly string[];
  readonly key?: string;
  readonly out?: string;
  readonly reasons: readonly string[];
  readonly register?: string;
  readonly replaces?: string;
  readonly timeAuthority: string | undefined;
  readonly topics?: string;
  readonly given: readonly string[];
}

/** What is issued: the inspection file as text and as read, and what its report is made from. */
interface Job {
  readonly text: string;
  readonly file: InspectionFile;
  readonly input: ReportInput;
}

/** `goodgrounds issue`: the report, signed, with the statement of what was issued attached; or a draft of it. */
export async function issueCommand(paths: readonly string[], options: IssueOptions, host: Host): Promise<ExitCode> {
  const [path, ...more] = paths;
  if (path === undefined || more.length > 0) throw new Stop(EXIT.input, "issue: name one inspection file.");
  const { out } = options;
  if (out === undefined || out === "") throw new Stop(EXIT.input, "issue: say where to write it with --out FOLDER.");
  const job = await jobAt(path, options, host);
  if (job === undefined) return EXIT.input;
  return options.draft ? draft(job, out, options, host) : issue(job, out, options, host);
}

async function jobAt(path: string, { topics: folder, earlier }: IssueOptions, host: Host): Promise<Job | undefined> {
  const text = await readText(path);
  const topics = topicsIn(folder);
  const parsed = readInspection(text, topics);
  if (!parsed.ok) {
    host.stderr.write(issueLines(path, parsed.issues));
    return undefined;
  }
  const { file } = parsed;
  return { text, file, input: withEarlier(assemble(file, true, topics), await readEarlier(earlier, file, host)) };
}

async function draft({ text, file, input }: Job, out: string, { given }: IssueOptions, host: Host): Promise<ExitCode> {
  const target = await guardedOutput(join(out, `${fileNameOf(file.id)}-draft.pdf`), given);
  const { writeReportPdf } = await import("@good-grounds/report/pdf");
  await writeWhole(target, writeReportPdf({ ...input, draft: true }, { json: text }));
  host.stdout.write(`${target}\n`);
  return EXIT.done;
}

async function issue(job: Job, out: string, options: IssueOptions, host: Host): Promise<ExitCode> {
  const { key: keyPath, certificate, timeAuthority } = options;
  if (keyPath === undefined)
    throw new Stop(EXIT.input, "issue: say with which key to sign with --key FILE, or ask for a draft with --draft.");
  signaturesStand(job.file);
  const reasons = reasonsFor(job.input, options.reasons);
  const keyText = await readText(keyPath);
  const open = await ofFile(keyPath, () => readPublicKey(keyText));
  const register = await registerOf(options.register);
  const at = momentNow();
  if (register !== undefined && !standsIn(register, open.key, at))
    throw new Stop(
      EXIT.input,
      `${keyPath}: the register has no such key, or it has ended. Add it with \`goodgrounds keys add\`.`,
    );
  const replaced = await replacedBy(options.replaces, job.file.id);
  const passphrase = await secretLine(host, "GOODGROUNDS_PASSPHRASE", "The passphrase of the key");
  const secrets = await ofFile(keyPath, () => openKeyFile(keyText, passphrase));
  const signer =
    certificate === undefined
      ? await signerOf(Buffer.from(open.certificate, "hex"), secrets.document)
      : await p12(certificate, host);
  host.stderr.write(await memoryNote(job.file.id, job.input));
  const { writeReportPdf } = await import("@good-grounds/report/pdf");
  const number = (replaced?.statement.number ?? 0) + 1;
  const pages = writeReportPdf({ ...job.input, issue: { number, replaces: replaced?.hash } }, { json: job.text });
  const about = {
    ...aboutJob(job),
    earlier: await Promise.all(options.earlier.map(async (path) => hashOf(await readText(path)))),
    number,
    replaces: replaced?.hash,
    previous: await previousIn(out),
    reasons,
    at,
    clock: "the device that issued it",
  };
  const authority = timeAuthority === undefined ? undefined : timeAuthorityAt(timeAuthority);
  const issued = await issueDocument(about, pages, { key: open, secrets, signer, register, authority });
  const base = join(out, issueName(job.file.id, number));
  const advice = "Name the issue it replaces with --replaces, or another folder.";
  await writtenOnce(`${base}.json`, issued.written, advice);
  await writtenOnce(`${base}.pdf`, issued.document, advice);
  host.stdout.write(`${base}.pdf\n${base}.json\n`);
  return EXIT.done;
}

function aboutJob({ text, file, input }: Job) {
  return aboutInspection({
    text,
    file,
    signatures: standingSignatures(file).map(({ name, signature }) => ({ name, ...signature })),
    outcome: input.outcome.outcome,
    topics: input.folder?.hash,
    release: RELEASE,
    layout: "command",
  });
}

/** Nothing is issued over a signature that was given for another content, or for none. */
function signaturesStand(file: InspectionFile): void {
  const signatures = standingSignatures(file);
  if (signatures.length === 0)
    throw new Stop(EXIT.open, "issue: nobody has signed the inspection. Sign it, or ask for a draft with --draft.");
  const not = signatures.filter(({ standing }) => standing !== "signed").map(({ words }) => words);
  if (not.length > 0)
    throw new Stop(
      EXIT.open,
      `issue: signatures of the inspection do not stand. Sign it again.\n${not.map((words) => `  ${words}`).join("\n")}`,
    );
}

async function replacedBy(path: string | undefined, report: string): Promise<IssueRecord | undefined> {
  if (path === undefined) return undefined;
  const given = await givenAt(path);
  const record = given.kind === "document" ? given.issued.record : given.kind === "record" ? given.record : undefined;
  if (record === undefined || !record.signed)
    throw new Stop(EXIT.input, `${path}: no issue with a signature that fits, where the one to replace was expected.`);
  if (record.statement.report !== report)
    throw new Stop(
      EXIT.input,
      `${path}: an issue of report ${record.statement.report}, where one of ${report} was expected.`,
    );
  return record;
}

/** The newest issue in a folder, by the hash of its statement: the firm's previous one. */
async function previousIn(folder: string): Promise<string | undefined> {
  const names = await readdir(folder).catch((error: unknown) => {
    throw new Stop(EXIT.unreadable, `${folder}: cannot be read (${reason(error)}). Make the folder first.`);
  });
  const records: IssueRecord[] = [];
  for (const name of names.filter((one) => /-issue-\d+\.json$/.test(one)).sort()) {
    const path = join(folder, name);
    const bytes = await readBytes(path);
    records.push(await ofFile(path, () => readRecord(new Uint8Array(bytes))));
  }
  return newestOf(records)?.hash;
}

async function p12(path: string, host: Host): Promise<Signer> {
  const bytes = await readBytes(path);
  const password = await secretLine(host, "GOODGROUNDS_CERTIFICATE_PASSWORD", "The password of the certificate");
  try {
    return await signerOfP12(new Uint8Array(bytes), password);
  } catch (error) {
    throw new Stop(
      EXIT.input,
      `${path}: cannot be opened as a PKCS #12 certificate with that password (${reason(error)}).`,
    );
  }
}
