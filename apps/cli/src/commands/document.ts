import { assemble, draftWhereOpen } from "@good-grounds/assembly";
import type { ReportInput } from "@good-grounds/report";
import { htmlOf } from "@good-grounds/report/document";
import { PAPER_KINDS, type PaperKind, paperOf } from "@good-grounds/report/papers";
import { CSV, guardedOutput, HTML, type OutputKind, PDF, XLSX } from "../guarded-output.ts";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";
import { readInspection } from "../inspection.ts";
import { judgedWithNote } from "../judged-with.ts";
import { photographsIn } from "../photographs.ts";
import { readText } from "../read.ts";
import { topicsIn } from "../topics-in.ts";
import { issueLines } from "../words.ts";
import { writeWhole } from "../write-whole.ts";

export interface DocumentOptions {
  readonly out: string | undefined;
  /** A folder with the photographs of the inspection, which the list of works shows. */
  readonly photographs: string | undefined;
  /** The firm's own folder of topics and standing views. */
  readonly topics: string | undefined;
  /** Every word of the command line but the output: none of the files they name is written over. */
  readonly given: readonly string[];
}

/** A form a document can have, chosen by how the name of the file ends. */
interface Form {
  readonly kind: OutputKind;
  /** Whether every paper has it; else the list of works alone. */
  readonly every: boolean;
  readonly write: (paper: PaperKind, input: ReportInput) => Promise<Uint8Array | string>;
}

const FORMS: Readonly<Record<string, Form>> = {
  ".pdf": {
    kind: PDF,
    every: true,
    async write(paper, input) {
      const { pdfOf } = await import("@good-grounds/report/document/pdf");
      return pdfOf(paperOf(paper, input));
    },
  },
  ".html": { kind: HTML, every: true, write: async (paper, input) => htmlOf(paperOf(paper, input)) },
  ".csv": {
    kind: CSV,
    every: false,
    async write(_, input) {
      const { worksListCsv } = await import("@good-grounds/report/papers/works-list");
      return worksListCsv(input);
    },
  },
  ".xlsx": {
    kind: XLSX,
    every: false,
    async write(_, input) {
      const { worksListXlsx } = await import("@good-grounds/report/papers/works-list");
      return worksListXlsx(input);
    },
  },
};

/** `goodgrounds document`: a paper for one reader, in the form that the name of the file asks for. */
export async function documentCommand(
  words: readonly string[],
  { out, photographs, topics: folder, given }: DocumentOptions,
  host: Host,
): Promise<ExitCode> {
  const [name, path, ...more] = words;
  const paper = PAPER_KINDS.find((kind) => kind === name);
  if (paper === undefined)
    throw new Stop(
      EXIT.input,
      `document: ${name === undefined ? "name a document" : `no document is called ${JSON.stringify(name.slice(0, 40))}`}. There are ${PAPER_KINDS.join(", ")}.`,
    );
  if (path === undefined || more.length > 0)
    throw new Stop(EXIT.input, `document: name one inspection file after ${paper}.`);
  if (out === undefined || out === "") throw new Stop(EXIT.input, "document: say where to write it with --out PATH.");
  const form = formOf(paper, out);
  const target = await guardedOutput(out, given, form.kind);
  const topics = topicsIn(folder);
  const parsed = readInspection(await readText(path), topics);
  if (!parsed.ok) {
    host.stderr.write(issueLines(path, parsed.issues));
    return EXIT.input;
  }
  host.stderr.write(judgedWithNote(path, parsed.file, topics));
  const { found, notes } = await photographsIn(photographs, parsed.file);
  host.stderr.write(notes.map((note) => `${note}\n`).join(""));
  const input = { ...draftWhereOpen(assemble(parsed.file, false, topics)), photographs: found };
  const written = await form.write(paper, input);
  // Laying out takes a while: what was put there meanwhile is guarded as well.
  if ((await guardedOutput(out, given, form.kind)) !== target)
    throw new Stop(EXIT.unreadable, `${out}: leads somewhere else than when the command began. Try again.`);
  await writeWhole(target, written);
  host.stdout.write(`${target}\n`);
  return EXIT.done;
}

function formOf(paper: PaperKind, out: string): Form {
  const ending = Object.keys(FORMS).find((one) => out.toLowerCase().endsWith(one));
  const form = ending === undefined ? undefined : FORMS[ending];
  const offered = Object.keys(FORMS).filter((one) => paper === "works" || FORMS[one]?.every === true);
  if (form === undefined || (paper !== "works" && !form.every))
    throw new Stop(
      EXIT.input,
      `document: ${JSON.stringify(out.slice(-80))} does not say in which form to write ${paper}. Let the name end in ${offered.join(" or ")}.`,
    );
  return form;
}
