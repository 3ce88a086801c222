import { concluded } from "../../check.ts";
import { asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { ENCLOSING } from "./enclosure-matters.ts";

/**
 * Whether barriers and enclosures are firm, whole and lasting (416.2.3): fixed firmly, every part there, nothing broken,
 * lock and hinges working where there are any. A missing blank is answered here even where no finger reaches a live
 * part through the gap, since the enclosure is no longer as it was made.
 */
export const barrierSecured = assessor({
  id: "barrier-secured",
  provision: "barriers-and-enclosures",
  title: "Barriers and enclosures are firm, whole and lasting",
  formula: "fixed firmly, complete, undamaged; lock and hinges work",
  regulations: ["416.2.3", "651.2"],
  needs: {
    firm: asksYesNo(ENCLOSING.firm),
    complete: asksYesNo(ENCLOSING.complete),
    undamaged: asksYesNo(ENCLOSING.undamaged),
    lock: asksWord(ENCLOSING.lock, ["works", "broken", "none-needed"]),
    hinges: asksWord(ENCLOSING.hinges, ["sound", "broken", "none"]),
  },
  conclude({ firm, complete, undamaged, lock, hinges }, reckon) {
    return concluded(
      reckon.all(
        ENCLOSING.secured,
        wants(reckon, ENCLOSING.firm, firm),
        wants(reckon, ENCLOSING.complete, complete),
        wants(reckon, ENCLOSING.undamaged, undamaged),
        wantsOneOf(reckon, ENCLOSING.lock, lock, ["works", "none-needed"]),
        wantsOneOf(reckon, ENCLOSING.hinges, hinges, ["sound", "none"]),
      ),
    );
  },
  examples: [
    {
      name: "sound board",
      given: { firm: "yes", complete: "yes", undamaged: "yes", lock: "none-needed", hinges: "sound" },
      verdict: "met",
      source: "BS 7671 416.2.3",
    },
    {
      name: "blank missing over a shrouded way",
      given: { firm: "yes", complete: "no", undamaged: "yes", lock: "none-needed", hinges: "sound" },
      verdict: "not-met",
      source: "BS 7671 416.2.3: the enclosure is not whole",
    },
    {
      name: "cupboard lock broken",
      given: { firm: "yes", complete: "yes", undamaged: "yes", lock: "broken", hinges: "sound" },
      verdict: "not-met",
      source: "BS 7671 416.2.3, 416.2.4",
    },
    {
      name: "not all looked at",
      given: { firm: "yes", complete: "yes", lock: "works", hinges: "sound" },
      verdict: "not-known",
      missing: ["enclosure-undamaged"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
