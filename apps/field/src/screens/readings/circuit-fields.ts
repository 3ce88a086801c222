import type { FieldGroup, ReadingField } from "../../keypad/fields.ts";
import { within } from "../../keypad/spot.ts";
import { join } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { READINGS } from "../../words/readings.ts";
import { type CircuitTests, circuitTests } from "./circuit-tests.ts";
import { rcdFields } from "./rcd-fields.ts";
import { type FreshName, pointFields } from "./ring-points.ts";

/** The tests of a circuit in their order: dead before live, a ring or R1+R2 first, then insulation, polarity, Zs, RCD. */
export function circuitGroups(
  record: JobRecord,
  boardId: string,
  circuitId: string,
  freshName: FreshName,
): readonly FieldGroup[] {
  const tests = circuitTests(record, boardId, circuitId);
  return [
    ...(tests.isRing ? ringGroups(tests, freshName) : [{ title: READINGS.dead, fields: [r1r2Field(tests)] }]),
    insulationGroup(tests),
    liveGroup(tests),
    furtherGroup(tests),
  ];
}

function r1r2Field({ record, circuit, isRing, reading }: CircuitTests): ReadingField {
  return reading(
    "r1r2",
    "continuity",
    READINGS.r1r2,
    isRing ? READINGS.r1r2Ring : READINGS.r1r2Hint,
    isRing ? ["cpc-continuity", "ring-continuity"] : ["cpc-continuity", "r1r2-length"],
    // R2 by the long lead serves instead.
    record.value(join(circuit, "readings/r2Only")) === undefined ? {} : { optional: true },
  );
}

/** A ring: end to end, then cross-connected and read at each point. */
function ringGroups(tests: CircuitTests, freshName: FreshName): readonly FieldGroup[] {
  const { record, circuit, expected, about, reading } = tests;
  const points = (name: "crossLineNeutral" | "crossLineCpc", label: (point: string) => string) =>
    pointFields(record, join(circuit, `readings/${name}`), freshName, label, expected[name], about("ring-continuity"));
  return [
    {
      title: READINGS.ring,
      fields: [
        reading("r1", "continuity", READINGS.r1, READINGS.r1Hint, []),
        reading("rn", "continuity", READINGS.rn, READINGS.rnHint, []),
        reading("r2", "continuity", READINGS.r2, READINGS.r2Hint, ["ring-continuity"]),
      ],
    },
    { title: READINGS.crossLN, help: READINGS.crossHelp, fields: points("crossLineNeutral", READINGS.lnAt) },
    { title: READINGS.crossLC, fields: [...points("crossLineCpc", READINGS.lcAt), r1r2Field(tests)] },
  ];
}

function insulationGroup({ reading, words }: CircuitTests): FieldGroup {
  return {
    title: READINGS.insulation,
    fields: [
      words("insulationVoltage", READINGS.insulationVoltage, []),
      reading("insulationLiveLive", "insulation", READINGS.liveLive, READINGS.liveLiveHint, []),
      reading("insulationLiveEarth", "insulation", READINGS.liveEarth, READINGS.liveEarthHint, [
        "insulation-resistance",
      ]),
      words("polarity", READINGS.polarity, ["polarity"]),
    ],
  };
}

function liveGroup({ record, circuit, reading }: CircuitTests): FieldGroup {
  const isTT = record.value("supply/earthing") === "TT";
  const hasOwnRcd = within(record.value(join(circuit, "rcd")), ["own"]) !== undefined;
  return {
    title: READINGS.live,
    liveOf: circuit,
    fields: [
      reading(
        "zs",
        "loop",
        READINGS.zs,
        READINGS.zsHint,
        ["maximum-zs", "zs-agreement"],
        isTT ? { usualOf: "electrode" } : {},
      ),
      // A live test as well, and asked of nobody who does not go there.
      reading(
        "faultCurrent",
        "fault-current",
        READINGS.faultCurrent,
        READINGS.faultCurrentHint,
        ["breaking-capacity"],
        { optional: true },
      ),
      ...(hasOwnRcd ? rcdFields({ path: join(circuit, "rcd"), inner: ["own"] }, join(circuit, "rcd/own")) : []),
    ],
  };
}

/** Readings that few circuits have. */
function furtherGroup({ isRing, reading }: CircuitTests): FieldGroup {
  return {
    title: READINGS.more,
    folded: true,
    fields: [
      ...(isRing ? [] : [reading("r2Only", "continuity", READINGS.r2Only, READINGS.r2OnlyHint, [])]),
      reading("temperature", "temperature", READINGS.temperature, undefined, []),
      reading("leakage", "leakage", READINGS.leakage, READINGS.leakageHint, []),
    ],
  };
}
