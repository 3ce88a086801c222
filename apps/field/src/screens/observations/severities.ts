import type { Severity } from "@good-grounds/core";

/** Severities as people write them. */
export function severities(list: readonly Severity[]): string {
  return list.map((one) => (one === "none" ? "no classification" : one)).join(" or ");
}
