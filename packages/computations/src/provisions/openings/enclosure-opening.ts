import { concluded } from "../../check.ts";
import { asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { ENCLOSING } from "./enclosure-matters.ts";

/**
 * How a barrier or enclosure over live parts comes open (416.2.4). One of these is enough: a key or tool; disconnection
 * first, kept until it is shut again; a further barrier of IPXXB or IP2X behind it that needs a key or tool. A few
 * accessories are left out by a note.
 */
export const enclosureOpening = assessor({
  id: "enclosure-opening",
  provision: "barriers-and-enclosures",
  title: "Enclosure opens only on purpose",
  formula: "by key or tool, or dead first, or a barrier of IPXXB behind",
  regulations: ["416.2.4"],
  needs: {
    opensBy: asksWord(ENCLOSING.opensBy, ["key", "tool", "hand"]),
    deadFirst: asksYesNo(ENCLOSING.deadFirst),
    barrierWithin: asksYesNo(ENCLOSING.barrierWithin),
    excepted: asksYesNo(ENCLOSING.excepted),
  },
  conclude({ opensBy, deadFirst, barrierWithin, excepted }, reckon) {
    return concluded(
      reckon.any(
        ENCLOSING.opening,
        wantsOneOf(reckon, ENCLOSING.opensBy, opensBy, ["key", "tool"]),
        wants(reckon, ENCLOSING.deadFirst, deadFirst),
        wants(reckon, ENCLOSING.barrierWithin, barrierWithin),
        wants(reckon, ENCLOSING.excepted, excepted),
      ),
    );
  },
  examples: [
    { name: "screwed cover", given: { opensBy: "tool" }, verdict: "met", source: "BS 7671 416.2.4" },
    {
      name: "door opened by hand, shrouded behind",
      given: { opensBy: "hand", deadFirst: "no", barrierWithin: "yes" },
      verdict: "met",
      source: "BS 7671 416.2.4",
    },
    {
      name: "cover lifts off by hand onto live parts",
      given: { opensBy: "hand", deadFirst: "no", barrierWithin: "no", excepted: "no" },
      verdict: "not-met",
      source: "BS 7671 416.2.4",
    },
    {
      name: "by hand, inside not seen",
      given: { opensBy: "hand", deadFirst: "no", excepted: "no" },
      verdict: "not-known",
      missing: ["barrier-within"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
