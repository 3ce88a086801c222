import {
  CIRCUIT_LOADS,
  CONDUCTOR_MATERIALS,
  type Evidence,
  isKnownFact,
  LENGTH_FOUND,
  type Matter,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import {
  agreement,
  CONDUCTOR_TOLERANCE,
  cableExpectation,
  doubtedOf,
  lengthFoundIn,
  lengthWithin,
  lineAndCpc,
  perMetre,
  testFactor,
} from "@good-grounds/measurement";
import { check, concluded, doesNotArise } from "../check.ts";
import { byOtherPath, isOnPipes, OTHER_PATH } from "../circuits/other-path.ts";
import { POSSIBLE_MISFIT } from "../circuits/possible-misfit.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * Whether R1+R2 fits the cable: (r1 + r2)·L at the test temperature, with real conductors up to 8 % below the greatest
 * permitted resistance and the length as good as the way it was found. Length L in m to the point of the reading, sizes in mm². For radial circuits whose protective
 * conductor is a core or a separate copper conductor; a ring is judged by its own check, armour and conduit have no
 * single resistance. R1+R2 too high: a joint, a smaller conductor, a longer run; too low: another circuit's value. Between
 * the line conductor alone and the cable, at a load on pipes, it is expected to: the pipes lie beside the protective conductor.
 */
export const r1r2Length = check({
  id: "r1r2-length",
  scope: "circuit",
  title: "R1+R2 fits the length and size of the cable",
  formula: "R1+R2 ≈ (r1 + r2)·L·Ft",
  regulations: ["643.2.1"],
  needs: {
    r1r2: asksQuantity(TERM.measuredR1R2, "0.24 Ω"),
    line: asksQuantity(TERM.lineArea, "2.5 mm²"),
    cpc: asksQuantity(TERM.cpcArea, "1.5 mm²"),
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
    length: asksQuantity(TERM.length, "12 m"),
    lengthFound: asksWord(MATTER.lengthFound, LENGTH_FOUND, "estimated where it is not said"),
    temperature: asksQuantity(TERM.testTemperature, "12 °C"),
    load: asksWord(MATTER.circuitLoad, CIRCUIT_LOADS, "pipes of a heater may lie beside the protective conductor"),
  },
  gather(circuit, installation) {
    const { shape, cable, readings } = circuit;
    if (isKnownFact(shape) && shape.word === "ring") return doesNotArise("a ring has a check of its own", shape);
    const cpc = cable.cpcArrangement;
    if (isKnownFact(cpc) && cpc.word !== "in-cable" && cpc.word !== "separate") {
      return doesNotArise("the protective conductor is not a copper core", cpc);
    }
    return {
      r1r2: readings.r1r2,
      line: cable.line,
      cpc: cable.cpc,
      material: cable.material,
      length: cable.length,
      lengthFound: lengthFoundIn(circuit, installation),
      temperature: readings.temperature,
      load: circuit.load,
    };
  },
  conclude(given, reckon) {
    const { r1r2, line, cpc, material, length, lengthFound, temperature, load } = given;
    const ofLine = perMetre(TERM.linePerMetre, line, material, reckon);
    const both = reckon.sum(TERM.conductorPerMetre, ofLine, perMetre(TERM.cpcPerMetre, cpc, material, reckon));
    const within = lengthWithin(length, lengthFound);
    const along = (each: Evidence<"ohm-per-metre">) => {
      const greatest = reckon.product(
        TERM.expectedR1R2,
        reckon.product(TERM.r1r2At20, each, within),
        testFactor(temperature),
      );
      return reckon.product(TERM.expectedR1R2, greatest, CONDUCTOR_TOLERANCE);
    };
    const cable = cableExpectation(given);
    const reading = { shown: r1r2, doubted: doubtedOf(r1r2) };
    const ofCable = { shown: along(both), doubted: lineAndCpc(cable) };
    const held = (question: Matter, how: "agrees-with" | "not-above") =>
      agreement(reckon, question, reading, ofCable, how);
    const fits = held(QUESTION.resistanceFitsCable, "agrees-with");
    const above = held(QUESTION.resistanceNotAbove, "not-above");
    const possible = fits.verdict === "too-near" ? [POSSIBLE_MISFIT] : [];
    const isLow = (fits.verdict === "not-met" || fits.verdict === "too-near") && above.verdict === "met";
    if (!isLow || !isOnPipes(load)) return concluded(fits, [], possible, [above]);
    const alone = byOtherPath(reading, { shown: along(ofLine), doubted: cable.core.line?.whole }, reckon);
    if (alone.verdict !== "met") return concluded(fits, [], possible, [above]);
    return concluded(reckon.any(QUESTION.resistanceFitsCable, fits, alone), [], [OTHER_PATH], [above]);
  },
  examples: [
    {
      name: "1.5/1.0 mm² over 35 m",
      given: {
        r1r2: "1.03 Ω",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        length: "35 m",
        temperature: "20 °C",
      },
      verdict: "met",
      values: { "r1r2-at-20": { value: 1.057, within: 1e-6 } },
      source: "BS EN 60228: (12.1 + 18.1) mΩ/m × 35 m = 1.057 Ω",
    },
    {
      name: "4/1.5 mm² over 25 m",
      given: {
        r1r2: "0.41 Ω",
        line: "4 mm²",
        cpc: "1.5 mm²",
        material: "copper",
        length: "25 m",
        temperature: "20 °C",
      },
      verdict: "met",
      values: { "r1r2-at-20": { value: 0.41775, within: 1e-6 } },
      source: "BS EN 60228: (4.61 + 12.1) mΩ/m × 25 m = 0.41775 Ω",
    },
    {
      name: "a value that belongs to a longer circuit",
      given: {
        r1r2: "1.01 Ω ±(2 % + 2 digits)",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        length: "27 m",
        lengthFound: "taped",
        temperature: "12 °C",
      },
      verdict: "not-met",
      source:
        "arithmetic: 30.2 mΩ/m × 27 m × 0.968 × 0.97 = 0.766 Ω; 0.24 Ω beyond it, with a standard deviation of 0.032 Ω",
    },
    {
      name: "the same where nobody said how the length was found",
      given: {
        r1r2: "1.01 Ω",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        length: "27 m",
        temperature: "12 °C",
      },
      verdict: "too-near",
      source:
        "arithmetic: 0.24 Ω beyond 0.766 Ω; an estimated length leaves a standard deviation of 0.08 Ω: 3.1 of them",
    },
    {
      name: "beyond what a guessed length explains",
      given: {
        r1r2: "1.35 Ω",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        length: "27 m",
        temperature: "12 °C",
      },
      verdict: "not-met",
      source: "arithmetic: 0.58 Ω beyond 0.766 Ω, with a standard deviation of 0.08 Ω: 7 of them",
    },
    {
      name: "pipes of a heater beside the protective conductor",
      given: {
        r1r2: "0.46 Ω ±(2 % + 2 digits)",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        length: "23 m",
        lengthFound: "taped",
        temperature: "21 °C",
        load: "water-heater",
      },
      verdict: "met",
      grade: "assumed",
      source: "arithmetic: 30.2 mΩ/m × 23 m × 0.97 = 0.68 Ω by the cable, 0.27 Ω by the line conductor alone",
    },
    {
      name: "the same at lights",
      given: {
        r1r2: "0.46 Ω ±(2 % + 2 digits)",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        length: "23 m",
        lengthFound: "taped",
        temperature: "21 °C",
        load: "lighting",
      },
      verdict: "not-met",
      source: "arithmetic: 0.22 Ω below 0.68 Ω",
    },
    {
      name: "less than the line conductor alone",
      given: {
        r1r2: "0.12 Ω ±(2 % + 2 digits)",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        length: "23 m",
        lengthFound: "taped",
        temperature: "21 °C",
        load: "water-heater",
      },
      verdict: "not-met",
      source: "arithmetic: 12.1 mΩ/m × 23 m × 0.97 = 0.27 Ω; no path shortens the line conductor",
    },
    {
      name: "length not known",
      given: { r1r2: "0.41 Ω", line: "4 mm²", cpc: "1.5 mm²", material: "copper", temperature: "20 °C" },
      verdict: "not-known",
      missing: ["length"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});
