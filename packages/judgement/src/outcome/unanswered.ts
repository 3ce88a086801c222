import type { Finding, OpenPoint, Path, Weighing } from "@good-grounds/core";

/**
 * Checks that hold one reading against its limit. A reading past the limit is a point although the instrument cannot
 * tell: nobody passes a reading that does not meet its limit without a word. Elsewhere "too near" comes from figures
 * that are known only as a range, and is told beside the outcome.
 */
const OF_A_READING: ReadonlySet<string> = new Set([
  "maximum-zs",
  "insulation-resistance",
  "rcd-time",
  "electrode",
  "bonding-continuity",
]);

/** Findings not met, and readings past their limit, of which no observation speaks: a point for each check. */
export function unanswered(
  { supply, boards, circuits }: Weighing,
  answered: ReadonlySet<Finding>,
): readonly OpenPoint[] {
  const open = [...supply, ...boards.flat(), ...circuits.flat()].filter((finding) => !answered.has(finding));
  return [
    ...byCheck(
      "not-met",
      open.filter(({ judgement }) => judgement.verdict === "not-met"),
    ),
    ...byCheck(
      "past-limit",
      open.filter(
        ({ check, judgement: { verdict, asRead } }) =>
          verdict === "too-near" && asRead === "not-met" && OF_A_READING.has(check),
      ),
    ),
  ];
}

function byCheck(kind: "not-met" | "past-limit", findings: readonly Finding[]): readonly OpenPoint[] {
  const places = new Map<string, Path[]>();
  for (const { check, path } of findings) places.set(check, [...(places.get(check) ?? []), path]);
  return [...places].map(([check, at]) => ({ kind, check, places: at }));
}
