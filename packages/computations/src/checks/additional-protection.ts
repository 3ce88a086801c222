import {
  CIRCUIT_LOADS,
  type CircuitLoad,
  type Fact,
  factNotKnown,
  isKnownFact,
  type Judgement,
  PREMISES_USES,
  type PremisesUse,
  type Reckoner,
  type Remark,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { additionalProtectionCurrent } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { rcdWorks, whyNotCounted } from "../circuits/rcd-test.ts";
import { asAnswers, delayNeed, devicesOf, residualNeeds, residualsBefore } from "../circuits/residual-devices.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  load: asksWord(MATTER.circuitLoad, CIRCUIT_LOADS),
  use: asksWord(ASKED.use, PREMISES_USES),
  ...residualNeeds,
  delay: delayNeed,
  equipmentRcd: asksYesNo(ASKED.equipmentRcd),
};

const BEHIND_30_MA = {
  load: "socket-outlets",
  use: "dwelling",
  rcd: "yes",
  residual: "30 mA",
  delay: "general",
} as const;

/**
 * Whether an RCD of at most 30 mA, without delay and found to work, stands before a circuit for which today's edition asks additional protection by what
 * it supplies: socket-outlets rated up to 32 A (411.3.3), luminaires in a dwelling (411.3.4), a shower (701.411.3.3) and
 * a charging point (722.531.3), whose own RCD may be in the equipment. Buried cables, what else stands in a room with a
 * bath or shower, and outdoor equipment are matters of observation. Of several RCDs in series one is enough. A departure is not by itself a danger: how it is
 * classified is for the person.
 */
export const additionalProtection = check({
  id: "additional-protection",
  scope: "circuit",
  title: "Additional protection by RCD where today's edition asks it",
  formula: "IΔn ≤ 30 mA, no delay, tΔ ≤ tΔ,max",
  regulations: ["411.3.3", "411.3.4", "415.1.1", "701.411.3.3", "722.531.3"],
  needs,
  gather(circuit, installation) {
    const { load, socketOutlets } = circuit;
    const { use } = installation;
    const bySockets = isKnownFact(socketOutlets) && socketOutlets.word;
    if (isKnownFact(load) && !bySockets && !mayBeWanted(load.word, use)) {
      return doesNotArise("today's edition does not ask it by what this circuit supplies", load);
    }
    const { rcd, residual, rcdTest, delay } = asAnswers(residualsBefore(circuit));
    return {
      load,
      use,
      rcd,
      residual,
      rcdTest,
      delay,
      equipmentRcd: NOT_RECORDED,
    };
  },
  conclude(given, reckon) {
    const { load, use, rcd } = given;
    // Of lights alone it depends on the premises whether an RCD is asked.
    if (!isKnownFact(load) || (load.word === "lighting" && !isKnownFact(use))) {
      return concluded(reckon.settled(QUESTION.additionalProtection, "not-known", "", load, use));
    }
    if (!isKnownFact(rcd)) return concluded(reckon.settled(QUESTION.additionalProtection, "not-known", "", rcd, load));
    const { judgement: inCircuit, beside } = rcd.word
      ? byDevices(given, reckon)
      : { judgement: reckon.settled(QUESTION.additionalProtection, "not-met", "no RCD", rcd, load, use), beside: [] };
    const judgement =
      load.word === "vehicle-charging"
        ? reckon.any(QUESTION.additionalProtection, inCircuit, inEquipment(given.equipmentRcd, reckon))
        : inCircuit;
    const remarks = judgement.verdict === "met" ? [] : remarksOn(judgement, given, reckon);
    return concluded(judgement, beside, remarks);
  },
  examples: [
    {
      name: "sockets behind 30 mA",
      given: { ...BEHIND_30_MA, rcdTest: "in-time" },
      verdict: "met",
      source: "BS 7671 411.3.3, 415.1.1",
    },
    {
      name: "sockets behind 30 mA that opens too late",
      given: { ...BEHIND_30_MA, rcdTest: "too-slow" },
      verdict: "not-met",
      source: "BS 7671 415.1.1, 643.8: the RCD failed its test",
    },
    {
      name: "sockets behind a dead 30 mA RCD",
      given: { ...BEHIND_30_MA, rcdTest: "does-not-operate" },
      verdict: "not-met",
      source: "BS 7671 415.1.1, 643.8: the RCD failed its test",
    },
    {
      name: "sockets behind 30 mA that was not tested",
      given: BEHIND_30_MA,
      verdict: "not-known",
      missing: ["rcd-tested"],
      source: "nothing shows that the RCD works",
    },
    {
      name: "dead RCD at the socket, a working one of 30 mA ahead",
      given: {
        ...BEHIND_30_MA,
        residual: ["30 mA", "30 mA"],
        delay: ["general", "general"],
        rcdTest: ["does-not-operate", "in-time"],
      },
      verdict: "met",
      source: "BS 7671 415.1.1: the one ahead protects the same circuit",
    },
    {
      name: "dead RCD at the socket, a delayed one of 100 mA ahead",
      given: {
        ...BEHIND_30_MA,
        residual: ["30 mA", "100 mA"],
        delay: ["general", "S"],
        rcdTest: ["does-not-operate", "in-time"],
      },
      verdict: "not-met",
      source: "BS 7671 415.1.1: it disconnects faults, and does not protect a person who touches a live part",
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
      name: "shower behind 100 mA only",
      given: { load: "shower", use: "dwelling", rcd: "yes", residual: "100 mA" },
      verdict: "not-met",
      source: "BS 7671 701.411.3.3: circuits of a room with a bath or shower",
    },
    {
      name: "charging point whose equipment was not looked into",
      given: { load: "vehicle-charging", use: "dwelling", rcd: "no" },
      verdict: "not-known",
      missing: ["equipment-rcd"],
      source: "BS 7671 722.531.3: an RCD for each point, in the circuit or in the equipment",
    },
    {
      name: "charging point with an RCD of its own",
      given: { load: "vehicle-charging", use: "dwelling", rcd: "no", equipmentRcd: "yes" },
      verdict: "met",
      source: "BS 7671 722.531.3",
    },
    {
      name: "charging point with no RCD anywhere",
      given: { load: "vehicle-charging", use: "dwelling", rcd: "no", equipmentRcd: "no" },
      verdict: "not-met",
      source: "BS 7671 722.531.3",
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

const WANTED: ReadonlySet<CircuitLoad> = new Set(["socket-outlets", "mixed", "shower", "vehicle-charging"]);

/** Whether it is asked by what the circuit supplies, or may be for all that is known of the premises. */
function mayBeWanted(load: CircuitLoad, use: Fact<PremisesUse>): boolean {
  if (WANTED.has(load)) return true;
  return (
    load === "lighting" && (!isKnownFact(use) || use.word === "dwelling" || use.word === "house-in-multiple-occupation")
  );
}

/**
 * One RCD that is sensitive, has no delay and works is enough, wherever it stands before the circuit. One that by its marks
 * never could be it stands beside where another one could: what became of that one decides.
 */
function byDevices(given: Given<typeof needs>, reckon: Reckoner) {
  const parts = devicesOf(given).map(({ residual, delay, test }) => {
    const marks = [
      reckon.atMost(QUESTION.rcdSensitive, residual, additionalProtectionCurrent),
      reckon.byWord(QUESTION.rcdUndelayed, delay, (word) => (word === "general" ? "met" : "not-met")),
    ];
    const mayBe = marks.every(({ verdict }) => verdict !== "not-met");
    return { mayBe, judgement: reckon.all(QUESTION.additionalProtection, ...marks, rcdWorks(test, reckon)) };
  });
  const those = (wanted: boolean) => parts.filter(({ mayBe }) => mayBe === wanted).map(({ judgement }) => judgement);
  const [able, others] = [those(true), those(false)];
  const [deciding, beside] = able.length > 0 ? [able, others] : [others, []];
  const [only] = deciding;
  const judgement =
    only !== undefined && deciding.length === 1 ? only : reckon.any(QUESTION.additionalProtection, ...deciding);
  return { judgement, beside };
}

/** A sensitive RCD that failed is a fault of the installation as it is; one that is not there is a departure. */
function remarksOn({ verdict }: Judgement, given: Given<typeof needs>, reckon: Reckoner): readonly Remark[] {
  const { rcd } = given;
  const sensitive = devicesOf(given).filter(
    ({ residual }) => reckon.atMost(QUESTION.rcdSensitive, residual, additionalProtectionCurrent).verdict === "met",
  );
  const there = isKnownFact(rcd) && rcd.word && sensitive.length > 0;
  const why = there
    ? whyNotCounted(
        sensitive.map(({ test }) => test),
        reckon,
      )
    : undefined;
  if (why !== undefined) return [why];
  return verdict === "not-met" ? [DEPARTURE] : [];
}

function inEquipment(equipmentRcd: Fact<boolean>, reckon: Reckoner): Judgement {
  return reckon.byWord(QUESTION.additionalProtection, equipmentRcd, (there) => (there ? "met" : "not-met"));
}

const NOT_RECORDED = factNotKnown(ASKED.equipmentRcd, ["load"]);

const DEPARTURE: Remark = Object.freeze({
  code: "departure-from-today",
  words:
    "A departure from today's edition. Whether it endangers anyone depends on who uses the circuit, where and how.",
});
