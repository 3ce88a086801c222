import type { Edition } from "./edition.ts";

/** BS 7671:2018 with amendments 2 (2022) and 3 (2024). */
export const EDITION_2018_A2_A3: Edition = Object.freeze<Edition>({
  id: "2018+A2+A3",
  label: "BS 7671:2018+A2:2022+A3:2024",
  published: "2022-03-28",
  withdrawn: "2026-10-15",
  unsatisfactory: ["C1", "C2", "FI"],
  furtherInvestigation:
    "Under this edition an FI was commonly treated as making the report unsatisfactory; the note on the model form itself named only C1 and C2.",
  notes: ["Amendment 3 (31 July 2024) added one-way and two-way protective devices (530.3.201)."],
});
