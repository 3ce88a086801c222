import { source } from "../sources.ts";
import type { Edition } from "./edition.ts";

const NOT_SEEN = "the text of amendment 4 itself was not seen";

/** BS 7671:2018 with amendment 4 (2026). */
export const EDITION_2018_A4: Edition = Object.freeze<Edition>({
  id: "2018+A4",
  label: "BS 7671:2018+A4:2026",
  published: "2026-04-15",
  withdrawn: null,
  overlap:
    "Usable from the day it was published. Until 15 October 2026 the edition before could be used in its place; a report says which it follows.",
  source: source("several trade articles and a trade discussion of amendment 4", "2026", "published", {
    doubt: NOT_SEEN,
  }),
  amendments: [
    {
      name: "A4:2026",
      published: "2026-04-15",
      changes: [
        "new chapter on stationary secondary batteries",
        "functional earthing and bonding for information technology; power over data cables",
        "medical locations revised (Section 710)",
        "amendment 3 taken in",
        "653.1, 653.2 and the notes to reports rewritten; outcome with FI; photographs and thermal images as evidence; whose signatures count",
      ],
      source: source("several trade articles and a trade discussion of amendment 4", "2026", "published", {
        doubt: `${NOT_SEEN}; the battery chapter is numbered 57 by some and 702 by others; changes to labels not confirmed`,
      }),
    },
  ],
  unsatisfactory: ["C1", "C2"],
  unsatisfactoryByForm: ["C1", "C2"],
  furtherInvestigation:
    "Under this edition an FI alone does not make the report unsatisfactory. In rented homes the law may still require the investigation within a set time.",
  outcomeSource: source("BS 7671 Appendix 6, by trade articles", "2018+A4", "published", { doubt: NOT_SEEN }),
  disconnectionScope: { regulation: "411.3.2.2", asOf: "2018" },
  notes: [
    "Part 6 and Appendix 6 were reworked: guidance for recipients belongs to the report, and photographs are accepted as evidence.",
    "Figures were carried over from the edition before; the text of amendment 4 itself was not at hand.",
  ],
});
