import type { IssueRecord } from "./record.ts";

/** The issue made last among several, by the moments of their statements; of two of one moment the later in the list. */
export function newestOf(records: readonly IssueRecord[]): IssueRecord | undefined {
  let newest: IssueRecord | undefined;
  for (const record of records) if (newest === undefined || record.statement.at >= newest.statement.at) newest = record;
  return newest;
}
