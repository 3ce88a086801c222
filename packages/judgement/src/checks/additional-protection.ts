import { CIRCUIT_LOADS, fact, isKnown, isKnownFact, PREMISES_USES, type Remark, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { additionalProtectionCurrent } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { nearestResidual } from "../circuits/nearest-residual.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo } from "../need.ts";

/**
 * Whether an RCD of at most 30 mA stands before a circuit for which today's edition asks additional protection by what
 * it supplies: socket-outlets rated up to 32 A (411.3.3) and luminaires in a dwelling (411.3.4). Buried cables, rooms
 * with a bath or shower and outdoor equipment are matters of observation. A departure is not by itself a danger: how it
 * is classified is for the person.
 */
export const additionalProtection = check({
  id: "additional-protection",
  scope: "circuit",
  title: "Additional protection by RCD where today's edition asks it",
  formula: "IΔn ≤ 30 mA",
  regulations: ["411.3.3", "411.3.4", "415.1.1"],
  needs: {
    load: asksWord(MATTER.circuitLoad, CIRCUIT_LOADS),
    use: asksWord(ASKED.use, PREMISES_USES),
    rcd: asksYesNo(MATTER.rcdPresent),
    residual: asksQuantity(TERM.residualOperatingCurrent, "30 mA"),
  },
  gather(circuit, installation) {
    const { load, socketOutlets } = circuit;
    const use = installation.file.brief.use;
    if (isKnownFact(load) && !wanted(load.word, use) && !(isKnownFact(socketOutlets) && socketOutlets.word)) {
      return doesNotArise("today's edition does not ask it by what this circuit supplies", load);
    }
    const rcd = nearestResidual(circuit);
    return {
      load,
      use: fact(ASKED.use, use, ["brief", "use"]),
      rcd: rcd.present,
      residual: rcd.residual,
    };
  },
  conclude({ load, use, rcd, residual }, reckon) {
    if (!isKnownFact(load) || !isKnownFact(use)) {
      return concluded(reckon.settled(QUESTION.additionalProtection, "not-known", "", load, use));
    }
    if (!isKnownFact(rcd)) return concluded(reckon.settled(QUESTION.additionalProtection, "not-known", "", rcd, load));
    if (!rcd.word) {
      return concluded(
        reckon.settled(QUESTION.additionalProtection, "not-met", "no RCD", rcd, load, use),
        [],
        [DEPARTURE],
      );
    }
    const judgement = reckon.atMost(QUESTION.additionalProtection, residual, additionalProtectionCurrent);
    return concluded(judgement, [], isKnown(residual) && judgement.verdict === "not-met" ? [DEPARTURE] : []);
  },
  examples: [
    {
      name: "sockets behind 30 mA",
      given: { load: "socket-outlets", use: "dwelling", rcd: "yes", residual: "30 mA" },
      verdict: "met",
      source: "BS 7671 411.3.3, 415.1.1",
    },
    {
      name: "lights in a dwelling behind 100 mA only",
      given: { load: "lighting", use: "dwelling", rcd: "yes", residual: "100 mA" },
      verdict: "not-met",
      source: "BS 7671 411.3.4, 415.1.1",
    },
    {
      name: "sockets without an RCD",
      given: { load: "socket-outlets", use: "shop", rcd: "no" },
      verdict: "not-met",
      source: "BS 7671 411.3.3",
    },
    {
      name: "RCD not verified",
      given: { load: "socket-outlets", use: "dwelling" },
      verdict: "not-known",
      missing: ["rcd-present"],
      source: "input missing",
    },
  ],
});

function wanted(load: (typeof CIRCUIT_LOADS)[number], use: (typeof PREMISES_USES)[number]): boolean {
  if (load === "socket-outlets" || load === "mixed") return true;
  return load === "lighting" && (use === "dwelling" || use === "house-in-multiple-occupation");
}

const DEPARTURE: Remark = Object.freeze({
  code: "departure-from-today",
  words:
    "A departure from today's edition. Whether it endangers anyone depends on who uses the circuit, where and how.",
});
