import type { About, AnyField, FieldGroup, ReadingField } from "../../keypad/fields.ts";
import type { KindId } from "../../keypad/kinds.ts";
import { within } from "../../keypad/spot.ts";
import { join, membersOf, ORDER } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { READINGS } from "../../words/readings.ts";
import { expectedOfCircuit } from "./expected.ts";
import { rcdFields } from "./rcd-fields.ts";

/** A name for the next point of a list, the same until something is written there. */
export type FreshName = (list: string) => string;

/** The tests of a circuit in their order: dead before live, a ring or R1+R2 first, then insulation, polarity, Zs, RCD. */
export function circuitGroups(
  record: JobRecord,
  boardId: string,
  circuitId: string,
  freshName: FreshName,
): readonly FieldGroup[] {
  const board = `boards/${boardId}`;
  const circuit = `${board}/circuits/${circuitId}`;
  const shape = record.value(join(circuit, "shape"));
  const isRing = shape === "ring";
  const expected = expectedOfCircuit(record, board, circuit);
  const isTT = record.value("supply/earthing") === "TT";
  const rcd = record.value(join(circuit, "rcd"));
  const hasOwnRcd = within(rcd, ["own"]) !== undefined;
  const about = (...checks: readonly string[]): readonly About[] => checks.map((check) => ({ place: circuit, check }));
  const reading = (
    name: string,
    kind: KindId,
    label: string,
    hint: string | undefined,
    checks: readonly string[],
    more: Partial<ReadingField> = {},
  ): ReadingField => ({
    spot: { path: join(circuit, `readings/${name}`) },
    kind,
    label,
    ...(hint === undefined ? {} : { hint }),
    about: about(...checks),
    ...(expected[name] === undefined ? {} : { expected: expected[name] }),
    ...more,
  });
  const points = (name: "crossLineNeutral" | "crossLineCpc", label: (point: string) => string) =>
    pointFields(record, join(circuit, `readings/${name}`), freshName, label, expected[name], about("ring-continuity"));
  const words = (name: "polarity" | "insulationVoltage", label: string, checks: readonly string[]): AnyField => ({
    spot: { path: join(circuit, `readings/${name}`) },
    label,
    words: READINGS.words[name],
    about: about(...checks),
  });
  const r1r2 = reading(
    "r1r2",
    "continuity",
    READINGS.r1r2,
    isRing ? READINGS.r1r2Ring : READINGS.r1r2Hint,
    isRing ? ["ring-continuity"] : ["r1r2-length"],
    // R2 by the long lead serves instead.
    record.value(join(circuit, "readings/r2Only")) === undefined ? {} : { optional: true },
  );
  const ring: readonly FieldGroup[] = [
    {
      title: READINGS.ring,
      fields: [
        reading("r1", "continuity", READINGS.r1, READINGS.r1Hint, []),
        reading("rn", "continuity", READINGS.rn, READINGS.rnHint, []),
        reading("r2", "continuity", READINGS.r2, READINGS.r2Hint, ["ring-continuity"]),
      ],
    },
    { title: READINGS.crossLN, help: READINGS.crossHelp, fields: points("crossLineNeutral", READINGS.lnAt) },
    { title: READINGS.crossLC, fields: [...points("crossLineCpc", READINGS.lcAt), r1r2] },
  ];
  return [
    ...(isRing ? ring : [{ title: READINGS.dead, fields: [r1r2] }]),
    {
      title: READINGS.insulation,
      fields: [
        words("insulationVoltage", READINGS.insulationVoltage, []),
        reading("insulationLiveLive", "insulation", READINGS.liveLive, READINGS.liveLiveHint, []),
        reading("insulationLiveEarth", "insulation", READINGS.liveEarth, READINGS.liveEarthHint, [
          "insulation-resistance",
        ]),
        words("polarity", READINGS.polarity, ["polarity"]),
      ],
    },
    {
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
    },
    {
      title: READINGS.more,
      folded: true,
      fields: [
        ...(isRing ? [] : [reading("r2Only", "continuity", READINGS.r2Only, READINGS.r2OnlyHint, [])]),
        reading("temperature", "temperature", READINGS.temperature, undefined, []),
        reading("leakage", "leakage", READINGS.leakage, READINGS.leakageHint, []),
      ],
    },
  ];
}

/** Readings of a cross-connected ring, point by point, and one more to go on with. */
function pointFields(
  record: JobRecord,
  list: string,
  freshName: FreshName,
  label: (point: string) => string,
  expected: number | undefined,
  about: readonly About[],
): readonly ReadingField[] {
  const names = membersOf(record, list);
  // Both rounds go past the same points: the second takes its names from the first.
  const others = membersOf(record, list.replace(/crossLineCpc$/, "crossLineNeutral"));
  const nameOf = (name: string, number: number): string => {
    const given = record.value(join(list, `${name}/point`));
    return typeof given === "string" ? given : READINGS.point(number);
  };
  const fresh = freshName(list);
  const number = names.length + 1;
  const sameAsBefore = others[names.length];
  const isSecond = list.endsWith("crossLineCpc");
  const before =
    isSecond && sameAsBefore !== undefined
      ? record.value(join(list.replace(/crossLineCpc$/, "crossLineNeutral"), `${sameAsBefore}/point`))
      : undefined;
  const freshPoint = typeof before === "string" ? before : READINGS.point(number);
  const field = (name: string, point: string): ReadingField => ({
    spot: { path: join(list, `${name}/reading`) },
    pointPath: join(list, `${name}/point`),
    kind: "continuity",
    label: label(point),
    about: [],
    ...(expected === undefined ? {} : { expected }),
  });
  return [
    ...names.map((name, i) => ({ ...field(name, nameOf(name, i + 1)), ...(i === names.length - 1 ? { about } : {}) })),
    {
      ...field(fresh, freshPoint),
      ...(names.length > 0 ? { offered: true } : {}),
      with: [
        [join(list, fresh), true],
        [join(list, `${fresh}/${ORDER}`), number],
        [join(list, `${fresh}/point`), freshPoint],
      ],
    },
  ];
}
