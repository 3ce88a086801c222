import { concluded } from "../../check.ts";
import { asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { ENCLOSING } from "./enclosure-matters.ts";

/**
 * Basic protection by obstacles (417.2), which holds only where skilled persons control or supervise the place (410.3.5,
 * 417.1). The obstacle stops people coming near by accident and, where equipment is operated live, touching live parts
 * while they do so. It may come off without key or tool but not by accident. It never stops a person who means to.
 */
export const obstacleProtection = assessor({
  id: "obstacles",
  provision: "obstacles",
  title: "Obstacles protect under skilled control",
  formula: "skilled control, no approach by accident, no contact in operation, not removed by accident",
  regulations: ["410.3.5", "417.1", "417.2"],
  needs: {
    supervision: asksWord(ENCLOSING.supervision, [
      "skilled",
      "instructed-under-skilled",
      "instructed-alone",
      "ordinary",
    ]),
    stopsApproach: asksYesNo(ENCLOSING.stopsApproach),
    operated: asksYesNo(ENCLOSING.operated),
    stopsContact: asksYesNo(ENCLOSING.stopsContact, "asked where equipment is operated live"),
    secure: asksYesNo(ENCLOSING.secure),
  },
  conclude({ supervision, stopsApproach, operated, stopsContact, secure }, reckon) {
    return concluded(
      reckon.all(
        ENCLOSING.obstacle,
        wantsOneOf(reckon, ENCLOSING.onlySkilled, supervision, ["skilled", "instructed-under-skilled"]),
        wants(reckon, ENCLOSING.stopsApproach, stopsApproach),
        reckon.any(
          ENCLOSING.duringOperation,
          wants(reckon, ENCLOSING.notOperated, operated, false),
          wants(reckon, ENCLOSING.stopsContact, stopsContact),
        ),
        wants(reckon, ENCLOSING.secure, secure),
      ),
    );
  },
  examples: [
    {
      name: "rail in a switch room",
      given: { supervision: "skilled", stopsApproach: "yes", operated: "no", secure: "yes" },
      verdict: "met",
      source: "BS 7671 417.2",
    },
    {
      name: "the same in a home",
      given: { supervision: "ordinary", stopsApproach: "yes", operated: "no", secure: "yes" },
      verdict: "not-met",
      source: "BS 7671 410.3.5: only under skilled control",
    },
    {
      name: "handle among bare bars",
      given: { supervision: "skilled", stopsApproach: "yes", operated: "yes", stopsContact: "no", secure: "yes" },
      verdict: "not-met",
      source: "BS 7671 417.2.1",
    },
    {
      name: "who comes there is not known",
      given: { stopsApproach: "yes", operated: "no", secure: "yes" },
      verdict: "not-known",
      missing: ["skilled-control"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
