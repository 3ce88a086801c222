import { join, resolve } from "node:path";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import { fonts } from "./fonts.ts";

/** A folder that need not exist: everything the layout reads is given from memory. */
const WORKSPACE = resolve("/", "good-grounds-report");

/** What the layout engine refused, with its own words. */
export class ReportRefused extends Error {}

/**
 * Lays a document out and returns it as PDF/A-3a. It is first written as PDF/UA-1, whose rules the engine enforces: a
 * document without alternative texts, without a title or with a skipped level of headings is refused. Throws
 * {@link ReportRefused} with the engine's diagnostics.
 */
export function layOut(template: string, files: ReadonlyMap<string, string | Uint8Array>): Uint8Array {
  const compiler = NodeCompiler.create({ workspace: WORKSPACE, fontArgs: [{ fontBlobs: [...fonts().faces] }] });
  for (const [name, content] of files)
    compiler.mapShadow(
      join(WORKSPACE, name),
      typeof content === "string" ? Buffer.from(content) : Buffer.from(content),
    );
  const mainFilePath = join(WORKSPACE, "main.typ");
  compiler.mapShadow(mainFilePath, Buffer.from(template));
  const compiled = compiler.compile({ mainFilePath });
  const document = compiled.result;
  if (document === null) {
    const fault = compiled.takeError();
    const found = fault === null ? "no reason given" : JSON.stringify(compiler.fetchDiagnostics(fault));
    throw new ReportRefused(`the document could not be laid out: ${found}`);
  }
  const write = (pdfStandard: "ua-1" | "a-3a") => {
    try {
      return compiler.pdf(document, { pdfStandard });
    } catch (error) {
      throw new ReportRefused(`the document was refused as ${pdfStandard}: ${String(error)}`, { cause: error });
    }
  };
  write("ua-1");
  return write("a-3a");
}
