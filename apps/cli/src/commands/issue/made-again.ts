import { assemble } from "@good-grounds/assembly";
import { RELEASE } from "@good-grounds/core";
import { hashOf, type Known, whyNotAgain } from "@good-grounds/issue";
import type { Issued } from "@good-grounds/issue/pdf";
import { readEarlier, withEarlier } from "../../earlier.ts";
import { type Host, Stop } from "../../host.ts";
import { readInspection } from "../../inspection.ts";
import { readText } from "../../read.ts";
import { topicsIn } from "../../topics-in.ts";

/** The pages laid out again from the attached evidence, or why that cannot be done here. */
export async function madeAgain(
  { record, evidence, pages }: Issued,
  { earlier, topics: folder }: { readonly earlier: readonly string[]; readonly topics?: string },
  host: Host,
): Promise<Known["madeAgain"]> {
  if (record === undefined || evidence === undefined || pages === undefined)
    return { not: "the document itself is not here, or it is not as signed." };
  const topics = topicsIn(folder);
  const given = await Promise.all(earlier.map(async (path) => hashOf(await readText(path))));
  const here = { release: RELEASE, layout: "command", topics: topics.folder?.hash, earlier: given } as const;
  const not = whyNotAgain(record.statement, here);
  if (not !== undefined) return { not };
  const json = new TextDecoder("utf-8", { ignoreBOM: true }).decode(evidence);
  const parsed = readInspection(json, topics);
  if (!parsed.ok) return { not: "the attached evidence is not taken by this program." };
  try {
    const { writeReportPdf } = await import("@good-grounds/report/pdf");
    const input = withEarlier(assemble(parsed.file, true, topics), await readEarlier(earlier, parsed.file, host));
    const { number, replaces } = record.statement;
    return writeReportPdf({ ...input, issue: { number, replaces } }, { json });
  } catch (error) {
    if (error instanceof Stop) throw error;
    return { not: "the pages could not be laid out here." };
  }
}
