import { assemble, draftWhereOpen } from "@good-grounds/assembly";
import { parseInspection } from "@good-grounds/inspection";
import type { ReportInput } from "@good-grounds/report";
import { bareText, htmlOf, type TypstDocument, typstOf } from "@good-grounds/report/document";
import { type PaperKind, paperOf } from "@good-grounds/report/papers";
import { worksListCsv, worksListXlsx } from "@good-grounds/report/papers/works-list";
import { coverageOf, reportDocument } from "@good-grounds/report/pdf/document";
import type { Topics } from "@good-grounds/topics";
import init, { type TypstCompiler, TypstCompilerBuilder } from "@myriaddreamin/typst-ts-web-compiler";
import type { PaperForm } from "../engine/paper-view.ts";
import { WRITER } from "../words/writer.ts";
import { FOLDER, isPart, PARTS } from "./parts.ts";

/** The layout engine and the faces lie beside the app; they are fetched when a report is first written. */
const ENGINE = "layout.wasm";
const FACES = PARTS.filter((name) => name.endsWith(".ttf"));

interface Writer {
  readonly compiler: TypstCompiler;
  readonly covers: (point: number) => boolean;
}

let opened: Promise<Writer> | undefined;

async function open(): Promise<Writer> {
  const [engine, ...faces] = await Promise.all([ENGINE, ...FACES].map(part));
  await init({ module_or_path: engine });
  const builder = new TypstCompilerBuilder();
  builder.set_dummy_access_model();
  for (const face of faces) await builder.add_raw_font(face);
  const coverages = faces.map(coverageOf);
  return { compiler: await builder.build(), covers: (point) => coverages.every((has) => has(point)) };
}

export { pointsToAnswer, toIssue } from "./to-issue.ts";

/** A part of the writer did not come; the message says what to do. */
class NotFetched extends Error {
  override name = "NotFetched";
}

async function part(name: string): Promise<Uint8Array<ArrayBuffer>> {
  const response = await fetch(new URL(FOLDER + name, globalThis.location.href)).catch(() => undefined);
  if (response?.ok !== true) throw new NotFetched(WRITER.notFetched(name));
  const bytes = await response.arrayBuffer().catch(() => undefined);
  if (bytes === undefined) throw new NotFetched(WRITER.notFetched(name));
  if (!(await isPart(name, bytes))) throw new NotFetched(WRITER.notThePart(name));
  return new Uint8Array(bytes);
}

/**
 * The condition report of an inspection file as PDF, tagged, with the inspection file and the workings attached. The
 * archive form PDF/A is written by the command, whose layout engine can hold to it.
 */
export async function writePdf(json: string, topics?: Topics): Promise<Uint8Array> {
  const input = draftWhereOpen(inputOf(json, topics));
  return laidOut((covers) => reportDocument(input, json, covers));
}

/** The pages of one issue of the report, over whatever stands open with its reason. */
export async function writeIssue(
  json: string,
  issue: NonNullable<ReportInput["issue"]>,
  topics?: Topics,
): Promise<Uint8Array> {
  const input = inputOf(json, topics);
  return laidOut((covers) => reportDocument({ ...input, issue }, json, covers));
}

/** A paper for one reader from an inspection file, in the form asked for; the list of works alone is a table as well. */
export async function writePaper(
  kind: PaperKind,
  form: PaperForm,
  json: string,
  topics?: Topics,
): Promise<Uint8Array | string> {
  const input = draftWhereOpen(inputOf(json, topics));
  switch (form) {
    case "pdf":
      return laidOut((covers) => typstOf(paperOf(kind, input), covers));
    case "html":
      return htmlOf(paperOf(kind, input));
    case "txt":
      return bareText(paperOf(kind, input));
    case "csv":
      return worksListCsv(input);
    case "xlsx":
      return worksListXlsx(input);
  }
}

function inputOf(json: string, topics: Topics | undefined): ReportInput {
  const parsed = parseInspection(json);
  if (!parsed.ok) throw new Error("the inspection file is not complete");
  return assemble(parsed.file, false, topics);
}

/** Lays out what is made once the fonts are there: they tell which characters they have. */
async function laidOut(make: (covers: Writer["covers"]) => TypstDocument): Promise<Uint8Array> {
  opened ??= open();
  opened.catch(() => {
    // What could not be fetched is fetched again when it is asked for again.
    opened = undefined;
  });
  const { compiler, covers } = await opened;
  const { template, files } = make(covers);
  compiler.reset_shadow();
  for (const [name, content] of files)
    compiler.map_shadow(`/${name}`, typeof content === "string" ? new TextEncoder().encode(content) : content);
  compiler.add_source("/main.typ", template);
  const { result, diagnostics } = compiler.compile("/main.typ", undefined, "pdf", 2) as {
    readonly result?: Uint8Array;
    readonly diagnostics?: unknown;
  };
  if (result === undefined) throw new Error(JSON.stringify(diagnostics));
  return result;
}
