import { source } from "@good-grounds/tables";

/** Where positions on contested points come from: nobody published them for us to read, and regulations are recalled. */
export const judgedBy = (regulations: string) =>
  source(`BS 7671 ${regulations}`, "2018+A4", "memory", {
    doubt: "the regulation is recalled; how far it reaches is judged",
  });

export const PRACTICE = source("what inspectors do", "none", "common-practice", {
  doubt: "held by some and not by others; nothing published was read",
});
