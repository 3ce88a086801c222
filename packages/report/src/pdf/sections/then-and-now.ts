import { isKnown } from "@good-grounds/core";
import { changeStep, trendSparkline } from "../../drawings/then-and-now.ts";
import type { ReportInput } from "../../input.ts";
import { EARLIER } from "../../locales/earlier-en.ts";
import {
  changeLines,
  countWords,
  dividedLines,
  hasChanged,
  leftOver,
  matchedWords,
  methodWords,
  restsOn,
  trendLines,
} from "../../words/then-and-now.ts";
import type { Drawings } from "../drawings.ts";

/** The comparison with earlier inspections; nothing where none was given. */
export function thenAndNow({ thenAndNow: comparison, installation }: ReportInput, drawings: Drawings) {
  if (comparison === undefined) return { earlier: [], trends: [] };
  const trends = trendLines(comparison, installation);
  const notable = trends.filter((one) => one.notable);
  return {
    title: EARLIER.title,
    method: methodWords(comparison),
    head: EARLIER.head,
    earlier: [...comparison.earlier].reverse().map((against) => {
      const changes = changeLines(against, installation);
      return {
        title: EARLIER.against(against.inspectedOn, against.id),
        words: [
          matchedWords(against),
          ...(against.otherAddress ? [EARLIER.otherAddress] : []),
          ...(against.byNameOnly ? [EARLIER.byNameOnly] : []),
          countWords(changes),
        ],
        rows: changes.filter(hasChanged).map(({ where, label, past, now, words, change }) => ({
          where,
          label,
          past,
          now,
          step: drawings.add(changeStep({ ...change, words: `${label}: ${words}` })),
          alt: `${label}: ${past}, ${now}`,
          words,
        })),
        rest: restsOn(changes.filter(hasChanged)),
        left: [...dividedLines(against), ...leftOver(against).map(([label, words]) => `${label}: ${words}`)],
      };
    }),
    "trends-title": EARLIER.trends,
    "trend-head": EARLIER.trendHead,
    next: trends.length > 0 && comparison.nextOn === null ? EARLIER.noNext : "",
    more: trends.length > notable.length ? EARLIER.moreTrends(trends.length - notable.length) : "",
    trends: notable.map(({ where, label, history, says, trend }) => ({
      where: `${where}, ${label}`,
      line: drawings.add(
        trendSparkline({
          ...trend,
          limit: isKnown(trend.limit) ? trend.limit.value : null,
          words: `${where}, ${label}: ${history}`,
        }),
      ),
      alt: history,
      words: [`${history}.`, ...says].join(" "),
    })),
  };
}
