import { isKnown } from "@good-grounds/core";
import { resolveDraft } from "@good-grounds/inspection";
import { isDated, thenAndNow } from "@good-grounds/readings";
import { trendLines, trendSparkline } from "@good-grounds/report";
import { draftOf } from "../draft.ts";
import type { TrendView } from "../picture-view.ts";
import type { Data } from "../protocol.ts";
import type { Weighed } from "./desk.ts";

/** Readings over the years, where inspections before this one are kept with the job. */
export function trendsOf(weighed: Weighed | undefined, earlier: readonly Data[]): readonly TrendView[] {
  if (weighed === undefined) return [];
  const { installation } = weighed;
  if (!isDated(installation)) return [];
  const before = earlier
    .flatMap((data) => draftOf(data) ?? [])
    .map(resolveDraft)
    .filter(isDated)
    .filter(({ inspectedOn }) => inspectedOn < installation.inspectedOn);
  if (before.length === 0) return [];
  return trendLines(thenAndNow(installation, before), installation).map(({ where, label, history, says, trend }) => ({
    name: `${where}, ${label}`,
    words: [`${history}.`, ...says].join(" "),
    svg: trendSparkline({
      ...trend,
      limit: isKnown(trend.limit) ? trend.limit.value : null,
      words: `${where}, ${label}: ${history}`,
    }),
  }));
}
