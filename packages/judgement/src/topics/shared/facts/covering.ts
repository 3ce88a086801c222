import { ranked, yesNo } from "@good-grounds/core";

/** What covers the live part itself, before anything that stands around it. */
export const COVERING_FACTS = Object.freeze({
  covering: ranked({
    asks: "What covers the live part itself, at the worst place?",
    effort: "glance",
    values: {
      "double-or-reinforced": "double or reinforced insulation covers it",
      sheathed: "insulation and a sound sheath cover it",
      "basic-sound": "basic insulation alone covers it, and is sound",
      "basic-damaged": "its insulation is cut, worn, cracked or perished, with no live metal to be touched",
      bare: "it is bare",
    },
    worked: {
      by: "live-insulation",
      met: "double-or-reinforced | sheathed | basic-sound",
      notMet: "basic-damaged | bare",
    },
  }),
  "meant-insulated": yesNo({
    asks: "Is it something made to be insulated, a conductor or a joint, and not a bar or terminal made bare?",
    effort: "glance",
    yes: "it was made to be insulated",
    no: "it was made bare, to stand behind a cover",
    worse: "yes",
  }),
});
