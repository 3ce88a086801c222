import {
  assumed,
  CABLE_KINDS,
  CIRCUIT_LOADS,
  CIRCUIT_SHAPES,
  CONDUCTOR_MATERIALS,
  type Compared,
  CPC_ARRANGEMENTS,
  type Evidence,
  GROUPINGS,
  INSULATIONS,
  isExact,
  isKnownFact,
  isOpen,
  LENGTH_FOUND,
  REFERENCE_METHODS,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { lengthFoundIn, lengthWithin } from "@good-grounds/measurement";
import { permittedDrop, tabulatedDrop } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { dropAsMeasured } from "../circuits/cable/drop-as-measured.ts";
import { dropUnderLoad } from "../circuits/cable/drop-under-load.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksWords, asksYesNo, type Given } from "../need.ts";

const needs = {
  shape: asksWord(MATTER.circuitShape, CIRCUIT_SHAPES),
  load: asksWord(MATTER.circuitLoad, CIRCUIT_LOADS),
  phases: asksWord(MATTER.phases, ["1", "3"]),
  nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
  publicNetwork: asksYesNo(ASKED.publicNetwork),
  kind: asksWord(MATTER.cableKind, CABLE_KINDS),
  insulation: asksWord(MATTER.insulation, INSULATIONS),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
  line: asksQuantity(TERM.lineArea, "2.5 mm²"),
  length: asksQuantity(TERM.length, "20 m"),
  lengthFound: asksWord(MATTER.lengthFound, LENGTH_FOUND, "estimated where it is not said"),
  designCurrent: asksQuantity(TERM.designCurrent, "16 A"),
  methods: asksWords(MATTER.method, REFERENCE_METHODS, "every method the route may have"),
  ambient: asksQuantity(TERM.ambientTemperature, "30 °C"),
  grouping: asksWord(MATTER.grouping, GROUPINGS),
  groupedCircuits: asksQuantity(TERM.count, "3"),
  surrounded: asksQuantity(TERM.length, "0.2 m surrounded by thermal insulation"),
  cpc: asksQuantity(TERM.cpcArea, "1.5 mm²"),
  cpcArrangement: asksWord(MATTER.cpcArrangement, CPC_ARRANGEMENTS),
  r1r2: asksQuantity(TERM.measuredR1R2, "0.60 Ω, of a radial to its far end"),
  r1: asksQuantity(TERM.ringLine, "0.44 Ω, of a ring"),
  rn: asksQuantity(TERM.ringNeutral, "0.44 Ω, of a ring"),
  temperature: asksQuantity(TERM.testTemperature, "12 °C, when they were read"),
};

type GivenHere = Given<typeof needs>;

/**
 * Voltage drop of the circuit's own cable: tabulated mV/A/m × L × Ib against the part of the nominal voltage that
 * Appendix 4 regards as satisfactory (525.202): 3 % for lighting, 5 % for other uses from the public network. L in m, Ib
 * in A. A ring fed with its load spread evenly has a quarter of the drop. Three-phase: against the line voltage, √3·U0.
 * Where the length leaves it open, the conductors as read decide what is to be expected.
 * The drop of a feeding circuit comes on top and is not included. The table is of a cable at its greatest temperature; where
 * the doubt of the length leaves that open, the drop as warm as the load makes the cable is what is to be expected
 * (Appendix 4, 6.1).
 */
export const voltageDrop = check({
  id: "voltage-drop",
  scope: "circuit",
  title: "Voltage drop",
  formula: "mV/A/m · L · Ib ≤ 3 % or 5 % of nominal; ring: a quarter",
  regulations: ["525.202"],
  needs,
  gather: (circuit, installation) => {
    const { shape, load, phases, cable, designCurrent, board, readings } = circuit;
    const { supply } = installation;
    return {
      shape,
      load,
      phases: isKnownFact(phases) ? phases : isKnownFact(board.phases) ? board.phases : supply.phases,
      nominalVoltage: supply.nominalVoltage,
      publicNetwork: supply.public,
      kind: cable.kind,
      insulation: cable.insulation,
      material: cable.material,
      line: cable.line,
      length: cable.length,
      lengthFound: lengthFoundIn(circuit, installation),
      designCurrent,
      methods: cable.methods,
      ambient: cable.ambient,
      grouping: cable.grouping,
      groupedCircuits: cable.groupedCircuits,
      surrounded: cable.surroundedByInsulation,
      cpc: cable.cpc,
      cpcArrangement: cable.cpcArrangement,
      r1r2: readings.r1r2,
      r1: readings.r1,
      rn: readings.rn,
      temperature: readings.temperature,
    };
  },
  conclude(given, reckon) {
    const judgement = dropJudged(given, reckon);
    return concluded(judgement, [], judgement.verdict === "not-known" ? [] : [OWN_CABLE_ONLY]);
  },
  examples: [
    {
      name: "20 A over 30 m of 2.5 mm²",
      given: {
        shape: "radial",
        load: "fixed-equipment",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        length: "30 m",
        lengthFound: "taped",
        designCurrent: "20 A",
      },
      verdict: "met",
      values: { "voltage-drop": { value: 10.8, within: 1e-9 } },
      source: "18 mV/A/m × 30 m × 20 A = 10.8 V ≤ 11.5 V",
    },
    {
      name: "6 A of lighting over 40 m of 1.5 mm²",
      given: {
        shape: "radial",
        load: "lighting",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1.5 mm²",
        length: "41 ± 1 m",
        designCurrent: "6 A",
      },
      verdict: "not-met",
      values: { "voltage-drop": { value: 7.134, within: 1e-9 } },
      source: "29 mV/A/m × 6 A × 40 m = 6.96 V at least > 6.9 V",
    },
    {
      name: "4 A of lighting over 40 m of 1.5 mm²",
      given: {
        shape: "radial",
        load: "lighting",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1.5 mm²",
        length: "40 m",
        designCurrent: "4 A",
      },
      verdict: "met",
      values: { "voltage-drop": { value: 4.64, within: 1e-9 } },
      source: "29 × 4 × 40 ÷ 1000 = 4.64 V",
    },
    {
      name: "nearly at the limit by the table, and cool at its load",
      given: {
        shape: "radial",
        load: "lighting",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1.5 mm²",
        methods: ["C"],
        length: "56 m",
        designCurrent: "4 A",
      },
      verdict: "met",
      source:
        "29 × 4 × (56 + 9.4) ÷ 1000 = 7.59 V at most; 30 + 40 × (4 ÷ 20)² = 31.6 °C, × 261.6 ÷ 300 = 6.62 V ≤ 6.9 V",
    },
    {
      name: "a length that may be too long, and conductors that were read",
      given: {
        shape: "radial",
        load: "lighting",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1 mm²",
        cpc: "1 mm²",
        cpcArrangement: "in-cable",
        methods: ["100"],
        length: "35 m",
        designCurrent: "4.4 A",
        r1r2: "1.28 Ω ±(2 % + 2 digits)",
        temperature: "23 °C",
      },
      verdict: "met",
      grade: "assumed",
      source:
        "44 × 4.4 × 41.25 ÷ 1000 = 7.99 V at most by the length; 1.28 Ω × 4.4 A × (230 + 38) ÷ 253 = 5.97 V, + 9 % at most ≤ 6.9 V",
    },
    {
      name: "no length at all, and conductors that were read",
      given: {
        shape: "ring",
        load: "socket-outlets",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        methods: ["C"],
        designCurrent: "20 A",
        r1: "0.44 Ω",
        rn: "0.44 Ω",
        temperature: "20 °C",
      },
      verdict: "met",
      grade: "assumed",
      source: "(0.44 + 0.44) ÷ 4 × 20 A × 270 ÷ 250 = 4.8 V at the most ≤ 11.5 V",
    },
    {
      name: "longer than was written, by its conductors",
      given: {
        shape: "radial",
        load: "lighting",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1.5 mm²",
        cpc: "1 mm²",
        cpcArrangement: "in-cable",
        methods: ["C"],
        length: "55 m",
        designCurrent: "4 A",
        r1r2: "2.60 Ω ±(2 % + 2 digits)",
        temperature: "20 °C",
      },
      verdict: "not-met",
      source: "2 × 2.60 Ω × 12.1 ÷ 30.2 × 4 A × 261.6 ÷ 250 = 8.7 V, − 8 % at most > 6.9 V",
    },
    {
      name: "pipes may lie beside what was read",
      given: {
        shape: "radial",
        load: "water-heater",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        cpcArrangement: "in-cable",
        methods: ["C"],
        length: "50 m",
        designCurrent: "13 A",
        r1r2: "0.60 Ω",
        temperature: "20 °C",
      },
      verdict: "too-near",
      source: "18 × 13 × (50 ± 8.5) ÷ 1000 = 9.7 to 13.7 V; R1+R2 tells nothing of the line conductor",
    },
    {
      name: "design current not recorded",
      given: {
        shape: "radial",
        load: "lighting",
        phases: "1",
        nominalVoltage: "230 V",
        publicNetwork: "yes",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1.5 mm²",
        length: "40 m",
      },
      verdict: "not-known",
      missing: ["design-current"],
      source: "input missing",
    },
  ],
});

/** By the table; where that leaves it open, as warm as the load makes the cable: as its conductors read, else by its length. */
function dropJudged(given: GivenHere, reckon: Reckoner): Compared {
  const tabulated = drop(given, reckon);
  const limit = permitted(given, reckon);
  const proven = reckon.atMost(QUESTION.dropWithin, tabulated, limit);
  if (!isOpen(proven.verdict)) return proven;
  const likely = (volts: Evidence<"volt"> | undefined) =>
    volts === undefined ? proven : reckon.atMost(QUESTION.dropWithin, volts, limit, "expected");
  const asRead = likely(dropAsMeasured(given, reckon));
  if (!isOpen(asRead.verdict) || proven.verdict !== "too-near") return isOpen(asRead.verdict) ? proven : asRead;
  const { shape, designCurrent } = given;
  const ring = isKnownFact(shape) && shape.word === "ring";
  const current = ring ? reckon.product(TERM.designCurrent, designCurrent, HALF) : designCurrent;
  const byLength = likely(dropUnderLoad(tabulated, current, given, reckon));
  return byLength.verdict === "met" ? byLength : proven;
}

function drop(given: GivenHere, reckon: Reckoner): Evidence<"volt"> {
  const { kind, insulation, material, line, phases, length, lengthFound, designCurrent, shape } = given;
  const figure =
    isKnownFact(kind) && isKnownFact(insulation) && isKnownFact(material) && isKnownFact(phases) && isExact(line)
      ? tabulatedDrop({
          kind: kind.word,
          insulation: insulation.word,
          material: material.word,
          area: line.value,
          loadedConductors: phases.word === "3" ? 3 : 2,
        })
      : undefined;
  const perAmpereMetre = reckon.lookedUp(TERM.dropPerAmpereMetre, figure, kind, insulation, material, line, phases);
  const perAmpere = reckon.product(TERM.dropPerAmpere, perAmpereMetre, lengthWithin(length, lengthFound));
  const radial = reckon.product(TERM.voltageDrop, perAmpere, designCurrent);
  if (!isKnownFact(shape)) return reckon.lookedUp(TERM.voltageDrop, undefined, shape, radial);
  return shape.word === "ring" ? reckon.product(TERM.voltageDrop, radial, QUARTER) : radial;
}

function permitted(given: GivenHere, reckon: Reckoner): Evidence<"volt"> {
  const { load, nominalVoltage, publicNetwork, phases } = given;
  const figure =
    isKnownFact(load) && isKnownFact(publicNetwork)
      ? permittedDrop({
          supply: publicNetwork.word ? "public" : "private",
          use: load.word === "lighting" ? "lighting" : "other",
        })
      : undefined;
  const fraction = reckon.lookedUp(TERM.dropFraction, figure, load, publicNetwork);
  const single = reckon.product(TERM.permittedVoltageDrop, nominalVoltage, fraction);
  return isKnownFact(phases) && phases.word === "3"
    ? reckon.product(TERM.permittedVoltageDrop, single, ROOT_3)
    : single;
}

const QUARTER = assumed(TERM.quarter, 0.25, "load spread evenly round the ring");
const HALF = assumed(TERM.ratio, 0.5, "half the load of a ring at the beginning of each of its legs");
const ROOT_3 = assumed(TERM.root3, Math.sqrt(3), "line voltage over voltage to earth");

const OWN_CABLE_ONLY: Remark = Object.freeze({
  code: "drop-of-own-cable",
  words: "The drop of this circuit's own cable at operating temperature; a feeding circuit adds its own.",
});
