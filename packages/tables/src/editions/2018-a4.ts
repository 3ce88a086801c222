import type { Edition } from "./edition.ts";

/** BS 7671:2018 with amendment 4 (2026). */
export const EDITION_2018_A4: Edition = Object.freeze<Edition>({
  id: "2018+A4",
  label: "BS 7671:2018+A4:2026",
  published: "2026-04-15",
  withdrawn: null,
  unsatisfactory: ["C1", "C2"],
  furtherInvestigation:
    "Under this edition an FI alone does not make the report unsatisfactory. In rented homes the law may still require the investigation within a set time.",
  notes: [
    "Part 6 and Appendix 6 were reworked: guidance for recipients belongs to the report, and photographs are accepted as evidence.",
    "Figures were carried over from the edition before; the text of amendment 4 itself was not at hand.",
  ],
});
