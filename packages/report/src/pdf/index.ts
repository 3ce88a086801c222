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
  const compile = (text: string, pdfStandard: "ua-1" | "a-3a") => {
    compiler.mapShadow(join(WORKSPACE, "data.json"), Buffer.from(text));
    return compiler.pdf({ mainFilePath: join(WORKSPACE, "main.typ") }, { pdfStandard });
  };
  const plain = displayable(JSON.stringify({ ...data, attach: false }), (text) => compile(text, "ua-1"));
  try {
    return compile(plain.replace(/"attach":false}$/, '"attach":true}'), "a-3a");
  } catch (error) {
    throw new ReportRefused(`the report could not be written as PDF/A-3a: ${String(error)}`);
  }
}

/** Rounds of finding characters the font lacks; one finds all of them, the second is for what it uncovered. */
const ROUNDS = 3;

/**
 * The data with characters the print font lacks written as their code point, "[U+1F642]", so that nothing is left blank;
 * the attached file has them as they were. `gate` compiles and throws what the layout engine refuses.
 */
function displayable(data: string, gate: (text: string) => unknown): string {
  let text = data;
  for (let round = 0; ; round++) {
    try {
      gate(text);
      return text;
    } catch (error) {
      const lacking = new Set(
        [...String(error).matchAll(/the text `\\?"(.+?)\\?"` could not be displayed/gu)].flatMap(([, cluster]) => [
          ...(cluster ?? ""),
        ]),
      );
      lacking.delete("\\");
      if (lacking.size === 0 || round === ROUNDS)
        throw new ReportRefused(`the report could not be laid out as PDF/UA-1: ${String(error)}`);
      text = [...text]
        .map((point) =>
          lacking.has(point) ? `[U+${point.codePointAt(0)?.toString(16).toUpperCase().padStart(4, "0")}]` : point,
        )
        .join("");
    }
  }
}

function fonts(): Buffer[] {
  const require = createRequire(import.meta.url);
  return FACES.map((face) => readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${face}.ttf`)));
}
