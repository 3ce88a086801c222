import {
  assumed,
  type CircuitLoad,
  type Evidence,
  isKnown,
  isKnownFact,
  notKnown,
  PREMISES_USES,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { type Circuit, type Installation, MATTER } from "@good-grounds/inspection";
import { DIVERSITY_LOADS, type DiversityLoad } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { afterDiversity, diversityLoad, diversityPremises } from "../circuits/demand.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantities, asksQuantity, asksWord, type Given } from "../need.ts";

const loads = asksQuantities(TERM.demandPart, "8 A, one for each circuit");

const needs = {
  use: asksWord(ASKED.use, PREMISES_USES),
  phases: asksWord(MATTER.phases, ["1", "3"]),
  lighting: loads,
  "heating-and-power": loads,
  cooking: loads,
  motors: loads,
  "instantaneous-water-heaters": loads,
  "thermostatic-water-heaters": loads,
  "standard-circuits": loads,
  "other-sockets": loads,
  stated: asksQuantity(TERM.maximumDemand, "68 A, measured or assessed by the inspector"),
  supplyRated: asksQuantity(TERM.ratedCurrent, "100 A, the supply device"),
  switchRated: asksQuantity(TERM.ratedSwitch, "100 A, the main switch"),
};

/**
 * Maximum demand after the handbook's diversity, in A, against the supply device and the main switch (311.1). Socket
 * circuits count with their rated current; others with their design current, or, where that is not known, with
 * anything up to their rated current. On three phases the spread of single-phase circuits is not known: between even
 * and all on one phase. The allowances are generous estimates and no requirement: they can show a demand within the supply,
 * but one beyond it only where a single load is. A demand the inspector measured or assessed decides before them.
 */
export const maximumDemand = check({
  id: "maximum-demand",
  scope: "supply",
  title: "Maximum demand within the supply",
  formula: "Σ demand after diversity ≤ In of the supply device and main switch",
  regulations: ["311.1", "536.4.202"],
  needs,
  gather(installation) {
    const groups = new Map<DiversityLoad, Evidence<"ampere">[]>(DIVERSITY_LOADS.map((load) => [load, []]));
    for (const circuit of installation.circuits) {
      if (isKnownFact(circuit.shape) && circuit.shape.word === "distribution") continue;
      const kind: CircuitLoad = isKnownFact(circuit.load) ? circuit.load.word : "fixed-equipment";
      groups.get(diversityLoad(kind))?.push(loadOf(circuit, kind));
    }
    const { supply, use } = installation;
    for (const missing of notListed(installation)) groups.get("standard-circuits")?.push(missing);
    return {
      use,
      phases: supply.phases,
      ...(Object.fromEntries(groups) as Record<DiversityLoad, Evidence<"ampere">[]>),
      stated: supply.statedDemand,
      supplyRated: supply.device.rated,
      switchRated: mainSwitch(installation),
    };
  },
  conclude(given, reckon) {
    const { stated, supplyRated, switchRated } = given;
    const within = (demand: Evidence<"ampere">) => {
      const fuse = reckon.atMost(QUESTION.demandWithinFuse, demand, supplyRated);
      const mainSwitch = reckon.atMost(QUESTION.demandWithinSwitch, demand, switchRated);
      return { fuse, both: reckon.all(QUESTION.demandWithin, fuse, mainSwitch) };
    };
    const reckoned = within(demandOf(given, reckon));
    if (isKnown(stated)) {
      const measured = within(stated);
      return concluded(measured.both, [reckoned.both], [], [measured.fuse]);
    }
    return concluded(reckoned.both, [], reckoned.both.verdict === "met" ? [] : [ALLOWANCES], [reckoned.fuse]);
  },
  examples: [
    {
      name: "a household within 100 A",
      given: {
        use: "dwelling",
        phases: "1",
        lighting: ["4 A", "4 A"],
        cooking: ["52.17 A"],
        "standard-circuits": ["32 A", "32 A"],
        supplyRated: "100 A",
        switchRated: "100 A",
      },
      verdict: "met",
      values: { "maximum-demand": { value: 0.66 * 8 + 10 + 0.3 * 42.17 + 32 + 0.4 * 32, within: 1e-9 } },
      source:
        "handbook diversity: 66 % of lighting; 10 A + 30 % of the rest of cooking; 100 % + 40 % of standard circuits",
    },
    {
      name: "two showers and an induction hob on 60 A",
      given: {
        use: "dwelling",
        phases: "1",
        "instantaneous-water-heaters": ["41 A", "37 A"],
        "standard-circuits": ["32 A"],
        supplyRated: "60 A",
        switchRated: "100 A",
      },
      verdict: "too-near",
      values: { "maximum-demand": { value: 110, within: 1e-9 } },
      source: "handbook diversity: both showers in full",
    },
    {
      name: "one load alone beyond the supply",
      given: {
        use: "dwelling",
        phases: "1",
        "instantaneous-water-heaters": ["78 A"],
        supplyRated: "60 A",
        switchRated: "100 A",
      },
      verdict: "not-met",
      source: "78 A alone is more than 60 A",
    },
    {
      name: "a cooker that alone is more than the supply, its allowance less",
      given: {
        use: "dwelling",
        phases: "1",
        lighting: ["6 A"],
        cooking: ["45 A"],
        supplyRated: "40 A",
        switchRated: "100 A",
      },
      verdict: "not-met",
      values: { "maximum-demand": { value: 45, within: 1e-9 } },
      source:
        "0.66 × 6 + 10 + 0.3 × 35 = 24.46 A by the allowances, and the cooker by itself takes 45 A, which is more than 40 A",
    },
    {
      name: "measured demand decides",
      given: {
        use: "dwelling",
        phases: "1",
        "instantaneous-water-heaters": ["41 A", "37 A"],
        stated: "52 A",
        supplyRated: "60 A",
        switchRated: "100 A",
      },
      verdict: "met",
      source: "52 A measured, 60 A supply",
    },
    {
      name: "supply device not seen",
      given: { use: "dwelling", phases: "1", lighting: ["4 A"], switchRated: "100 A" },
      verdict: "not-known",
      missing: ["rated-current"],
      source: "input missing",
    },
  ],
});

/** Socket circuits by their device; the rest by design current, or anything up to the device's rating. */
function loadOf(circuit: Circuit, kind: CircuitLoad): Evidence<"ampere"> {
  const { designCurrent, device } = circuit;
  if (kind === "socket-outlets" || kind === "mixed") return device.rated;
  if (isKnown(designCurrent)) return designCurrent;
  if (!isKnown(device.rated)) return notKnown(TERM.demandPart, [...circuit.path, "designCurrent"]);
  const why = `${circuit.designation} ${circuit.description}: design current not recorded; anything up to the rated current`;
  return assumed(TERM.demandPart, device.rated.value, why, [0, device.rated.high]);
}

/** What stands for circuits that nobody listed: a load that is not known, so that no sum is taken without them. */
function notListed({ boards, boardsListed }: Installation): readonly Evidence<"ampere">[] {
  return [boardsListed, ...boards.map(({ circuitsListed }) => circuitsListed)].flatMap((listed) =>
    isKnownFact(listed) ? [] : [notKnown(TERM.demandPart, listed.detail.path)],
  );
}

/** The switch at the origin, or that of the first board fed from the supply. */
function mainSwitch({ supply, boards }: Installation): Evidence<"ampere"> {
  if (isKnown(supply.mainSwitchRated)) return supply.mainSwitchRated;
  const first = boards.find(({ atOrigin }) => !isKnownFact(atOrigin) || atOrigin.word);
  if (first === undefined) return supply.mainSwitchRated;
  // A board of which nobody recorded whence it is fed may be the first or not.
  if (!isKnownFact(first.atOrigin)) return notKnown(TERM.ratedSwitch, first.atOrigin.detail.path);
  return first.mainSwitchRated;
}

function demandOf(given: Given<typeof needs>, reckon: Reckoner): Evidence<"ampere"> {
  const { use, phases } = given;
  if (!isKnownFact(use) || !isKnownFact(phases)) return reckon.lookedUp(TERM.maximumDemand, undefined, use, phases);
  const premises = diversityPremises(use.word);
  const parts = DIVERSITY_LOADS.filter((kind) => given[kind].length > 0).map((kind) =>
    afterDiversity(kind, premises, given[kind], reckon),
  );
  if (parts.length === 0) return reckon.lookedUp(TERM.maximumDemand, undefined, notKnown(TERM.demandPart, ["boards"]));
  const all = reckon.sum(TERM.maximumDemand, ...parts);
  // The allowances are generous estimates; what is certain is the largest single load running by itself, so that the
  // demand is never less than that.
  const certain = reckon.largest(
    TERM.demandPart,
    ...DIVERSITY_LOADS.flatMap((kind) => fixedLoads(kind, given)),
    NO_LOAD,
  );
  const demand = reckon.between(TERM.maximumDemand, certain, all);
  return phases.word === "1" ? demand : reckon.product(TERM.maximumDemand, demand, SPREAD);
}

/** Socket circuits may carry nothing; every other load can run at its own current. */
function fixedLoads(kind: DiversityLoad, given: Given<typeof needs>): readonly Evidence<"ampere">[] {
  return kind === "standard-circuits" || kind === "other-sockets" ? [] : given[kind];
}

const NO_LOAD = assumed(TERM.demandPart, 0, "nothing switched on");

const SPREAD = assumed(
  TERM.ratio,
  1 / 3,
  "which phase each circuit is on was not recorded: between even and all on one phase",
  [1 / 3, 1],
);

const ALLOWANCES: Remark = Object.freeze({
  code: "demand-by-allowance",
  words: "Reckoned with handbook allowances: a measured demand over a busy week would be better evidence.",
});
