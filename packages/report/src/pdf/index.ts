import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import type { ReportInput } from "../input.ts";
import { reportModel } from "./model.ts";
import { TEMPLATE } from "./template.ts";

/** The faces the layout uses; loading no others keeps the start short. */
const FACES = [
  "400Regular/SourceSans3_400Regular",
  "600SemiBold/SourceSans3_600SemiBold",
  "700Bold/SourceSans3_700Bold",
];

/** A folder that need not exist: everything the layout reads is given from memory. */
const WORKSPACE = resolve("/", "good-grounds-report");

/** What the layout engine refused, with its own words. */
export class ReportRefused extends Error {}

/**
 * Makes the condition report. The same input and source give the same bytes. It is compiled once as PDF/UA-1, which
 * refuses a document without alternative texts, title or ordered headings, and then written as PDF/A-3a with the
 * inspection file attached.
 */
export function writeReportPdf(input: ReportInput, source: { readonly json: string }): Uint8Array {
  const { data, parts } = reportModel(input);
  const compiler = NodeCompiler.create({ workspace: WORKSPACE, fontArgs: [{ fontBlobs: fonts() }] });
  for (const { name, svg } of parts) compiler.mapShadow(join(WORKSPACE, name), Buffer.from(svg));
  compiler.mapShadow(join(WORKSPACE, "inspection.json"), Buffer.from(source.json));
  compiler.mapShadow(join(WORKSPACE, "main.typ"), Buffer.from(TEMPLATE));
  const compile = (pdfStandard: "ua-1" | "a-3a", attach: boolean) => {
    compiler.mapShadow(join(WORKSPACE, "data.json"), Buffer.from(JSON.stringify({ ...data, attach })));
    try {
      return compiler.pdf({ mainFilePath: join(WORKSPACE, "main.typ") }, { pdfStandard });
    } catch (error) {
      throw new ReportRefused(`the report could not be laid out as ${pdfStandard}: ${String(error)}`);
    }
  };
  compile("ua-1", false);
  return compile("a-3a", true);
}

function fonts(): Buffer[] {
  const require = createRequire(import.meta.url);
  return FACES.map((face) => readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${face}.ttf`)));
}
