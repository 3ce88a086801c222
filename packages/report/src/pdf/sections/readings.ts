import type { Evidence, Unit } from "@good-grounds/core";
import type { Board, Circuit, InspectionFile } from "@good-grounds/inspection";
import { MISFITS } from "../../locales/misfits-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { type AnyFact, type Cell, cell, factCell, valueCell } from "../cell.ts";
import { shortNumber } from "./circuit-number.ts";
import { methods } from "./methods.ts";

/** Readings of a circuit that a reason may have been given for leaving out. */
type ReadingName = keyof typeof REPORT.readingName;

type WrittenCircuits = InspectionFile["boards"][number]["circuits"];

/** The readings of a board's circuits as rows, why some are missing, and what else was noted. */
export function circuitReadings(board: Board, written: WrittenCircuits) {
  return {
    readings: board.circuits.map((circuit) => row(circuit).map((one, i) => inUnit(one, REPORT.readingsHead[i]?.[1]))),
    reasons: reasons(board),
    methods: methods(board, written),
    "ring-points": board.circuits.flatMap(ringPoints),
    notes: board.circuits.flatMap(({ designation, readings }, i) => {
      const note = written[i]?.note;
      const neutrals = readings.insulationBetweenNeutrals;
      const short = shortNumber(designation);
      return [
        ...(short === designation ? [] : [REPORT.longNumber(short, designation)]),
        ...(neutrals.kind === "not-known" && neutrals.detail.silence === "absent"
          ? []
          : [MISFITS.betweenNeutrals(designation, valueCell(neutrals).words)]),
        ...(readings.faultCurrent.kind === "measured"
          ? [REPORT.faultCurrentAt(designation, valueCell(readings.faultCurrent).words)]
          : []),
        ...(note === undefined ? [] : [REPORT.circuitNote(designation, note)]),
      ];
    }),
  };
}

/** A figure without its unit where that stands in the heading; one in another unit keeps its own. */
export function inUnit(one: Cell, unit: string | undefined): Cell {
  if (one.open || unit === undefined || unit === "" || !one.words.endsWith(unit)) return one;
  const figure = one.words.slice(0, -unit.length).trimEnd();
  return /\d$/.test(figure) ? cell(figure) : one;
}

function row(circuit: Circuit): readonly Cell[] {
  const { readings: r, shape } = circuit;
  // A radial has no ends of a ring to measure: that is no gap.
  const ring = (evidence: Evidence<"ohm">) =>
    shape.kind === "fact" &&
    shape.word !== "ring" &&
    evidence.kind === "not-known" &&
    evidence.detail.silence === "absent"
      ? cell("–")
      : valueCell(evidence);
  return [
    cell(shortNumber(circuit.designation)),
    cell(circuit.description),
    ring(r.r1),
    ring(r.rn),
    ring(r.r2),
    valueCell(r.r1r2),
    optional(r.r2Only),
    valueCell(r.insulationLiveLive),
    valueCell(r.insulationLiveEarth),
    factCell(r.insulationVoltage),
    factCell(r.polarity, REPORT.polarityWord),
    valueCell(r.zs),
    optional(r.leakage),
  ];
}

/** A reading that stands in for another or is rarely taken: where nothing was recorded, a dash and not a gap. */
function optional(evidence: Evidence<Unit>): Cell {
  return evidence.kind === "not-known" && evidence.detail.silence === "absent" ? cell("–") : valueCell(evidence);
}

/** Each reason once, with the readings it was given for. */
function reasons(board: Board): readonly string[] {
  const places = new Map<string, string[]>();
  for (const circuit of board.circuits) {
    const { readings: r, residual } = circuit;
    const [rcd] = residual.devices;
    const asked: readonly (readonly [ReadingName, Evidence<Unit> | AnyFact | undefined])[] = [
      ["r1", r.r1],
      ["rn", r.rn],
      ["r2", r.r2],
      ["r1r2", r.r1r2],
      ["r2Only", r.r2Only],
      ["insulationLiveLive", r.insulationLiveLive],
      ["insulationLiveEarth", r.insulationLiveEarth],
      ["insulationVoltage", r.insulationVoltage],
      ["polarity", r.polarity],
      ["zs", r.zs],
      ["faultCurrent", r.faultCurrent],
      ["timeAtRated", rcd?.timeAtRated],
      ["timeAtFive", rcd?.timeAtFive],
      ["button", rcd?.button],
      ["leakage", r.leakage],
      ["insulationBetweenNeutrals", r.insulationBetweenNeutrals],
      ["neutral", circuit.cable.neutral],
      ["phases", circuit.phases],
    ];
    for (const [name, leaf] of asked) {
      if (leaf?.kind !== "not-known" && leaf?.kind !== "fact-not-known") continue;
      if (leaf.detail.reason === "" || leaf.detail.silence === "absent") continue;
      const held = places.get(leaf.detail.reason) ?? [];
      held.push(REPORT.inCircuit(circuit.designation, REPORT.readingName[name]));
      places.set(leaf.detail.reason, held);
    }
  }
  return [...places].map(([why, list]) => REPORT.reason(why, list));
}

/** A reading of a point with how it was taken and what was noted. */
function spokenReading(reading: Evidence<"ohm">): string {
  const { method, note } = reading.kind === "measured" ? reading.detail.taken : {};
  return [valueCell(reading).words, method, note].filter((part) => part !== undefined).join(", ");
}

function ringPoints({ designation, readings: r }: Circuit): readonly string[] {
  return (
    [
      [REPORT.lineNeutral, r.crossLineNeutral],
      [REPORT.lineCpc, r.crossLineCpc],
    ] as const
  ).flatMap(([between, points]) =>
    points.length === 0
      ? []
      : [
          REPORT.ringPoints(
            designation,
            between,
            points.map(({ point, reading }) => `${point} ${spokenReading(reading)}`),
          ),
        ],
  );
}
