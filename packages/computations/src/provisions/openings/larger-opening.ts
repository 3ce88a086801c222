import { concluded } from "../../check.ts";
import { asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { ENCLOSING } from "./enclosure-matters.ts";

/**
 * Whether an opening larger than IPXXB and IP2X allow may stand (416.2.1): it arises while a lamp, fuse or the like is
 * replaced, or the equipment cannot work without it; something keeps people from touching live parts there by accident;
 * they will know that live parts can be touched; and it is no larger than its purpose needs. A part that is missing or
 * broken is never such a purpose.
 */
export const largerOpening = assessor({
  id: "larger-opening",
  provision: "barriers-and-enclosures",
  title: "Larger opening allowed during replacement or for function",
  formula: "its purpose, a precaution, people aware, no larger than needed",
  regulations: ["416.2.1"],
  needs: {
    purpose: asksWord(ENCLOSING.purpose, ["replacing-a-part", "function", "none"]),
    precaution: asksYesNo(ENCLOSING.precaution),
    aware: asksYesNo(ENCLOSING.aware),
    noLarger: asksYesNo(ENCLOSING.noLarger),
  },
  conclude({ purpose, precaution, aware, noLarger }, reckon) {
    return concluded(
      reckon.all(
        ENCLOSING.larger,
        wantsOneOf(reckon, ENCLOSING.purpose, purpose, ["replacing-a-part", "function"]),
        wants(reckon, ENCLOSING.precaution, precaution),
        wants(reckon, ENCLOSING.aware, aware),
        wants(reckon, ENCLOSING.noLarger, noLarger),
      ),
    );
  },
  examples: [
    {
      name: "lampholder while the lamp is changed",
      given: { purpose: "replacing-a-part", precaution: "yes", aware: "yes", noLarger: "yes" },
      verdict: "met",
      source: "BS 7671 416.2.1, exceptions",
    },
    { name: "blank missing", given: { purpose: "none" }, verdict: "not-met", source: "BS 7671 416.2.1: no purpose" },
    {
      name: "old fuse carrier whose contacts show when it is drawn",
      given: { purpose: "replacing-a-part", precaution: "no", aware: "yes", noLarger: "yes" },
      verdict: "not-met",
      source: "BS 7671 416.2.1, exceptions",
    },
    {
      name: "people's knowledge not settled",
      given: { purpose: "function", precaution: "yes", noLarger: "yes" },
      verdict: "not-known",
      missing: ["opening-aware"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
