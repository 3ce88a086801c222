import { FIELDS_AT } from "@good-grounds/inspection";
import type { About, FieldGroup, ReadingField, WordField } from "../../keypad/fields.ts";
import { KIND_OF_RANGE, type KindId } from "../../keypad/kinds.ts";
import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { BONDED, SUPPLY } from "../../words/installation.ts";
import { READINGS } from "../../words/readings.ts";
import { faultCurrentFrom, figureAt } from "../readings/expected.ts";

const about = (...checks: readonly string[]): readonly About[] => checks.map((check) => ({ place: "supply", check }));

/** Readings that have their place among the tests below; every other one of the fields stands among the further ones. */
const ARRANGED: ReadonlySet<string> = new Set([
  "ze",
  "ra",
  "lineNeutralLoop",
  "faultCurrent",
  "earthFaultCurrent",
  "voltage",
]);
const FURTHER = Object.entries(FIELDS_AT["supply/readings"]).flatMap(([name, field]) =>
  "range" in field && field.range !== undefined && !ARRANGED.has(name) ? [[name, field.range, field] as const] : [],
);

/** The tests at the origin: what is measured live with everything as found, then Ze with the installation isolated. */
export function supplyGroups(record: JobRecord): readonly FieldGroup[] {
  return [originGroup(record), isolatedGroup(record), FURTHER_GROUP, bondingGroup(record)].filter(
    ({ fields }) => fields.length > 0,
  );
}

function reading(
  name: string,
  kind: KindId,
  label: string,
  hint: string | undefined,
  checks: readonly string[],
  more: Partial<ReadingField> = {},
): ReadingField {
  return {
    spot: { path: `supply/readings/${name}` },
    kind,
    label,
    ...(hint === undefined ? {} : { hint }),
    about: about(...checks),
    ...more,
  };
}

const isTT = (record: JobRecord) => record.value("supply/earthing") === "TT";

function originGroup(record: JobRecord): FieldGroup {
  const isThreePhase = record.value("supply/phases") === 3;
  const loop = figureAt(record, "supply/readings/lineNeutralLoop", "ohm");
  const ze = figureAt(record, "supply/readings/ze", "ohm");
  const current = faultCurrentFrom(record, smallest(loop, isTT(record) ? undefined : ze));
  return {
    title: SUPPLY.groups.origin,
    fields: [
      {
        spot: { path: "supply/readings/polarity" },
        label: SUPPLY.polarity,
        words: READINGS.words.polarity,
        about: about("supply-polarity"),
      },
      reading("voltage", "voltage", SUPPLY.voltage, SUPPLY.voltageHint, ["supply-voltage"]),
      reading("lineNeutralLoop", "loop", SUPPLY.loop, undefined, []),
      reading("faultCurrent", "fault-current", SUPPLY.pfc, SUPPLY.pfcHint, ["supply-breaking-capacity"], {
        ...(current === undefined ? {} : { expected: current }),
      }),
      ...(isThreePhase ? THREE_PHASE : []),
    ],
  };
}

const THREE_PHASE: readonly WordField[] = [
  {
    spot: { path: "supply/readings/faultCurrentMethod" },
    label: READINGS.faultCurrentMethod,
    words: READINGS.words.faultCurrentMethod,
  },
  {
    spot: { path: "supply/readings/phaseSequence" },
    label: READINGS.phaseSequence,
    words: READINGS.words.polarity,
  },
];

function isolatedGroup(record: JobRecord): FieldGroup {
  return {
    title: SUPPLY.groups.isolated,
    fields: [
      reading(
        "ze",
        "loop",
        SUPPLY.ze,
        SUPPLY.zeHint,
        ["external-impedance"],
        isTT(record) ? { usualOf: "electrode" } : {},
      ),
      ...(isTT(record) ? [reading("ra", "electrode", SUPPLY.ra, SUPPLY.raHint, ["electrode"])] : []),
      reading("earthFaultCurrent", "fault-current", SUPPLY.pefc, SUPPLY.pefcHint, [], { optional: true }),
    ],
  };
}

const FURTHER_GROUP: FieldGroup = {
  title: SUPPLY.groups.further,
  folded: true,
  fields: FURTHER.map(([name, range, { label, help, usual }]) =>
    reading(name, KIND_OF_RANGE[range], label, help, [], usual === undefined ? {} : { usual }),
  ),
};

function bondingGroup(record: JobRecord): FieldGroup {
  return {
    title: SUPPLY.groups.bonding,
    fields: membersOf(record, "supply/bonding")
      .filter((name) => record.value(`supply/bonding/${name}/extraneous`) !== false)
      .map((name): ReadingField => {
        const to = record.value(`supply/bonding/${name}/to`);
        return {
          spot: { path: `supply/bonding/${name}/resistance` },
          kind: "continuity",
          label: typeof to === "string" ? (BONDED[to] ?? to) : name,
          about: [{ place: `supply/bonding/${name}`, check: "bonding-continuity" }],
        };
      }),
  };
}

function smallest(...figures: readonly (number | undefined)[]): number | undefined {
  const known = figures.filter((figure) => figure !== undefined);
  return known.length === 0 ? undefined : Math.min(...known);
}
