import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { openItems } from "./items.ts";
import { notToldTwice } from "./not-told-twice.ts";
import { capitalised } from "./observation-order.ts";
import { shortened } from "./shortened.ts";

/** How many limits the first page lists before it points to the section that has them all. */
const SHOWN = 8;

/** Everything that was not seen, not tested or could not be worked out, most telling first. */
export function unseen({ installation, weighing, samples }: ReportInput): readonly string[] {
  const { extent, limitations } = installation.file;
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const arising = all.filter(({ judgement }) => judgement.verdict !== "not-applicable");
  const open = arising.filter(({ judgement }) => judgement.verdict === "not-known").length;
  const items = openItems(installation.file);
  const summary = notToldTwice(
    extent.notCovered ?? "",
    limitations.map(({ what }) => what),
  ).join("; ");
  const limits = [
    ...(summary === "" ? [] : [shortened(summary)]),
    ...limitations.map(({ what, why }) => `${what}: ${shortened(why)}`),
    ...extent.sampling.flatMap(({ what, inspected: seen, population }, i) =>
      seen < population ? [REPORT.sampled(what, seen, population, samples[i]?.most)] : [],
    ),
  ].map(capitalised);
  const shown = limits.length > SHOWN ? limits.slice(0, SHOWN - 1) : limits;
  return [
    ...(limits.length === 0 ? [REPORT.noneUnseen] : shown),
    ...(shown.length < limits.length ? [REPORT.unseenMore(limits.length - shown.length)] : []),
    ...(items > 0 ? [REPORT.itemsOpen(items)] : []),
    ...(open > 0 ? [REPORT.checksOpen(open, arising.length)] : []),
  ];
}
