import { source } from "../sources.ts";
import type { Edition } from "./edition.ts";

/** BS 7671:2018 with amendments 2 (2022) and 3 (2024). */
export const EDITION_2018_A2_A3: Edition = Object.freeze<Edition>({
  id: "2018+A2+A3",
  label: "BS 7671:2018+A2:2022+A3:2024",
  published: "2022-03-28",
  withdrawn: "2026-10-15",
  overlap:
    "The text before it could be used until 27 September 2022. From 15 April 2026 amendment 4 may be used in its place; a report says which it follows.",
  source: source("trade articles and a trade discussion of the amendments", "2022 to 2026", "published"),
  amendments: [
    {
      name: "A2:2022",
      published: "2022-03-28",
      changes: ["RCD test at the rated residual current only", "surge protection", "arc fault detection", "notices"],
      source: source("summary of the changes of amendment 2", "2022", "published"),
    },
    {
      name: "A3:2024",
      published: "2024-07-31",
      changes: ["devices fed from one side or from both sides (Part 2, 530.3.201)"],
      source: source("free supplement to BS 7671, device makers' pages", "2024", "published"),
    },
  ],
  unsatisfactory: ["C1", "C2", "FI"],
  unsatisfactoryByForm: ["C1", "C2"],
  furtherInvestigation:
    "Under this edition an FI was commonly treated as making the report unsatisfactory; the note on the model form itself named only C1 and C2.",
  outcomeSource: source("BS 7671 Appendix 6 and common practice", "2018+A2+A3", "common-practice", {
    doubt: "the form named C1 and C2; that FI counts as well was practice",
  }),
  disconnectionScope: { regulation: "411.3.2.2", asOf: "2018" },
  notes: ["Amendment 3 (31 July 2024) added one-way and two-way protective devices (530.3.201)."],
});
