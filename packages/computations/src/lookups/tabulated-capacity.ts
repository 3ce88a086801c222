import {
  CABLE_KINDS,
  CONDUCTOR_MATERIALS,
  INSULATIONS,
  isExact,
  isKnownFact,
  REFERENCE_METHODS,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { tabulatedCapacity, tabulatedDrop } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity, asksWord } from "../need.ts";

/** Tabulated capacity in A and voltage drop in V/A/m of a cable. */
export const capacityOfCable = calculation({
  id: "tabulated-capacity",
  title: "Tabulated current-carrying capacity and voltage drop",
  formula: "Appendix 4 tables 4D1, 4D2, 4D4, 4D5, 4E4",
  regulations: ["523"],
  needs: {
    kind: asksWord(MATTER.cableKind, CABLE_KINDS),
    insulation: asksWord(MATTER.insulation, INSULATIONS),
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
    line: asksQuantity(TERM.lineArea, "2.5 mm²"),
    method: asksWord(MATTER.method, REFERENCE_METHODS),
    phases: asksWord(MATTER.phases, ["1", "3"]),
  },
  compute({ kind, insulation, material, line, method, phases }, reckon) {
    const by = [kind, insulation, material, line, phases];
    const cable =
      isKnownFact(kind) && isKnownFact(insulation) && isKnownFact(material) && isExact(line) && isKnownFact(phases)
        ? {
            kind: kind.word,
            insulation: insulation.word,
            material: material.word,
            area: line.value,
            loadedConductors: phases.word === "3" ? (3 as const) : (2 as const),
          }
        : undefined;
    const capacity =
      cable !== undefined && isKnownFact(method) ? tabulatedCapacity({ ...cable, method: method.word }) : undefined;
    const drop = cable === undefined ? undefined : tabulatedDrop(cable);
    return {
      results: [
        reckon.lookedUp(TERM.tabulatedCapacity, capacity, ...by, method),
        reckon.lookedUp(TERM.dropPerAmpereMetre, drop, ...by),
      ],
      remarks: [],
    };
  },
  examples: [
    {
      name: "2.5 mm² clipped direct",
      given: {
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        method: "C",
        phases: "1",
      },
      values: {
        "tabulated-capacity": { value: 27, within: 0 },
        "drop-per-ampere-metre": { value: 0.018, within: 1e-12 },
      },
      source: "BS 7671 Tables 4D5A and 4D5B",
    },
    {
      name: "10 mm² armoured, three-phase, in air",
      given: {
        kind: "armoured",
        insulation: "90C-thermosetting",
        material: "copper",
        line: "10 mm²",
        method: "E",
        phases: "3",
      },
      values: { "tabulated-capacity": { value: 78, within: 0 } },
      source: "BS 7671 Table 4E4A",
    },
  ],
});
