import {
  type InspectionFile,
  parseInspection,
  resolveInstallation,
  type WholeInstallation,
} from "@good-grounds/inspection";
import { thenAndNow } from "@good-grounds/readings";
import type { ReportInput } from "@good-grounds/report";
import { EXIT, type Host, Stop } from "./host.ts";
import { readText } from "./read.ts";
import { issueLines } from "./words.ts";

/** What a report is made from, with the comparison with earlier inspections where any are given. */
export function withEarlier(input: ReportInput, earlier: readonly WholeInstallation[]): ReportInput {
  return earlier.length === 0 ? input : { ...input, thenAndNow: thenAndNow(input.installation, earlier) };
}

/** More earlier inspections than this tell nothing more, and each costs a matching of all circuits. */
const MOST = 20;

/**
 * Reads the files of `--earlier`. Stops where one is wrong, is given twice, or is not of an earlier day than the present
 * inspection.
 */
export async function readEarlier(
  paths: readonly string[],
  present: Pick<InspectionFile, "inspectedOn">,
  host: Host,
): Promise<readonly WholeInstallation[]> {
  if (paths.length > MOST)
    throw new Stop(EXIT.input, `--earlier: ${paths.length} files, where at most ${MOST} were expected.`);
  const found: WholeInstallation[] = [];
  const seen = new Set<string>();
  for (const path of paths) {
    const parsed = parseInspection(await readText(path));
    if (!parsed.ok) {
      host.stderr.write(issueLines(path, parsed.issues));
      throw new Stop(EXIT.input, `${path}: cannot be used as an earlier inspection.`);
    }
    const { inspectedOn, id } = parsed.file;
    if (inspectedOn >= present.inspectedOn)
      throw new Stop(
        EXIT.input,
        `${path}: inspected on ${inspectedOn}, where a day before ${present.inspectedOn} was expected. Name the later inspection first and the earlier ones with --earlier.`,
      );
    if (seen.has(`${id} ${inspectedOn}`)) throw new Stop(EXIT.input, `${path}: the same inspection is given twice.`);
    seen.add(`${id} ${inspectedOn}`);
    found.push(resolveInstallation(parsed.file));
  }
  return found;
}
