import { assemble } from "@good-grounds/assembly";
import { hashOf, type Known } from "@good-grounds/issue";
import type { Issued } from "@good-grounds/issue/pdf";
import { readEarlier, withEarlier } from "../../earlier.ts";
import { type Host, Stop } from "../../host.ts";
import { readInspection } from "../../inspection.ts";
import { readText } from "../../read.ts";
import { topicsIn } from "../../topics-in.ts";
import { VERSION } from "../../version.ts";

/** The pages laid out again from the attached evidence, or why that cannot be done here. */
export async function madeAgain(
  { record, evidence, pages }: Issued,
  { earlier, topics: folder }: { readonly earlier: readonly string[]; readonly topics?: string },
  host: Host,
): Promise<Known["madeAgain"]> {
  if (record === undefined || evidence === undefined || pages === undefined)
    return { not: "the document itself is not here, or it is not as signed." };
  const { release, topics: hash, earlier: hashes } = record.statement;
  if (release !== VERSION)
    return { not: `made by release ${release}, and this is ${VERSION}. That release makes them again.` };
  const topics = topicsIn(folder);
  if (topics.folder?.hash !== hash)
    return { not: "made with another folder of topics. Name the firm's with --topics, or none where it had none." };
  const given = await Promise.all(earlier.map(async (path) => hashOf(await readText(path))));
  if (given.join() !== hashes.join())
    return { not: `held against ${hashes.length} earlier inspections. Name the same, in their order, with --earlier.` };
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
