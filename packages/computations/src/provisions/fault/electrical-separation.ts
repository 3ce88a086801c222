import { published, TERM } from "@good-grounds/core";
import { source } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants } from "../verdicts.ts";
import { FAULT } from "./matters.ts";

const MOST = published(
  TERM.nominalVoltage,
  500,
  source("BS 7671 413.3.2", "2008 to 2018+A4", "memory"),
  "voltage of the separated circuit",
);

/**
 * Fault protection by electrical separation (413): a source with at least simple separation, at most 500 V, no part of
 * the circuit joined to earth, one item of equipment. Several items only where skilled or instructed persons supervise
 * (418.3). Voltage in V.
 */
export const electricalSeparation = assessor({
  id: "electrical-separation",
  provision: "fault-protection",
  title: "Electrical separation protects",
  formula: "separating source, Un ≤ 500 V, not earthed, one item",
  regulations: ["413.1.2", "413.3", "418.3"],
  needs: {
    isolatingSource: asksYesNo(FAULT.isolatingSource),
    nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
    toEarth: asksYesNo(FAULT.toEarth),
    oneItem: asksYesNo(FAULT.oneItem),
    supervised: asksYesNo(FAULT.supervised, "asked where there are several items"),
  },
  conclude({ isolatingSource, nominalVoltage, toEarth, oneItem, supervised }, reckon) {
    return concluded(
      reckon.all(
        FAULT.separation,
        wants(reckon, FAULT.isolatingSource, isolatingSource),
        reckon.atMost(FAULT.separatedVoltage, nominalVoltage, MOST),
        wants(reckon, FAULT.unearthed, toEarth, false),
        reckon.any(
          FAULT.soleMeasure,
          wants(reckon, FAULT.oneItem, oneItem),
          wants(reckon, FAULT.supervised, supervised),
        ),
      ),
    );
  },
  examples: [
    {
      name: "shaver supply unit",
      given: { isolatingSource: "yes", nominalVoltage: "230 V", toEarth: "no", oneItem: "yes" },
      verdict: "met",
      source: "BS 7671 413.3",
    },
    {
      name: "several items without supervision",
      given: { isolatingSource: "yes", nominalVoltage: "230 V", toEarth: "no", oneItem: "no", supervised: "no" },
      verdict: "not-met",
      source: "BS 7671 413.1.2, 418.3",
    },
    {
      name: "shaver outlet without an isolating transformer",
      given: { isolatingSource: "no", nominalVoltage: "230 V", toEarth: "no", oneItem: "yes" },
      verdict: "not-met",
      source: "BS 7671 413.3.1",
    },
    {
      name: "earth connection not tested",
      given: { isolatingSource: "yes", nominalVoltage: "230 V", oneItem: "yes" },
      verdict: "not-known",
      missing: ["joined-to-earth"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
