import {
  CIRCUIT_LOADS,
  CIRCUIT_SHAPES,
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  EARTHING_SYSTEMS,
  REFERENCE_METHODS,
} from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import fc from "fast-check";

/** The least an inspection file can hold. */
export function smallestFile(): InspectionFile {
  return {
    format: "good-grounds-inspection",
    version: 3,
    id: "small",
    edition: "2018+A4",
    inspectedOn: "2026-10-20",
    brief: {
      client: { name: "Client" },
      premises: { address: ["1 Lane"] },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "test",
      records: [],
    },
    visits: [{ date: "2026-10-20" }],
    people: [],
    instruments: [],
    extent: { covered: "all", sampling: [] },
    limitations: [],
    supply: { bonding: [] },
    boards: [{ id: "b", name: "Board", fedFrom: "supply", circuits: [] }],
    inspected: [],
    observations: [],
    photographs: [],
    signatures: [],
  };
}

const decimal = fc
  .tuple(fc.nat({ max: 99_999 }), fc.integer({ min: 0, max: 3 }))
  .map(([n, d]) => (n / 10 ** d).toFixed(d));
const quantity = (unit: string) => decimal.map((digits) => `${digits} ${unit}`);
const notKnown = fc.record({
  notKnown: fc.constantFrom("limited", "not-verified", "not-applicable"),
  reason: fc.constantFrom("locked", "in use"),
});
const stated = (unit: string) =>
  fc.oneof({ weight: 4, arbitrary: quantity(unit) }, fc.record({ from: quantity(unit), to: quantity(unit) }), notKnown);
const reading = (unit: string) =>
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc.record(
        {
          shown: fc.tuple(fc.constantFrom("", ">", "<"), quantity(unit)).map((parts) => parts.join("")),
          with: fc.constant("m"),
          at: fc.constant("2026-10-20T10:00:00+01:00"),
        },
        { requiredKeys: ["shown"] },
      ),
    },
    fc.record({
      notTaken: fc.constantFrom("limited", "not-verified", "not-applicable"),
      reason: fc.constantFrom("animals", "no access"),
    }),
  );
const words = fc.stringMatching(/^[A-Za-z0-9 ,.'()/-]{1,40}$/).filter((text) => text.trim() !== "");
const optional: { requiredKeys: ("id" | "designation" | "description")[] } = {
  requiredKeys: ["id", "designation", "description"],
};

const circuit = (id: string) =>
  fc.record(
    {
      id: fc.constant(id),
      designation: words,
      description: fc.oneof(words, fc.constantFrom("Küche – Größe", "灯具", "ملاحظة", "🙂")),
      shape: fc.oneof(fc.constantFrom(...CIRCUIT_SHAPES), notKnown),
      load: fc.oneof(fc.constantFrom(...CIRCUIT_LOADS), notKnown),
      phases: fc.constantFrom(1 as const, 3 as const),
      device: fc.record(
        {
          standard: fc.constantFrom(...DEVICE_STANDARDS),
          type: fc.constantFrom(...DEVICE_TYPES),
          rated: stated("A"),
          breakingCapacity: stated("kA"),
        },
        { requiredKeys: [] },
      ),
      rcd: fc.oneof(
        fc.constant("none" as const),
        notKnown,
        fc.record({
          own: fc.record(
            { residual: stated("mA"), readings: fc.record({ atRated: reading("ms") }, { requiredKeys: [] }) },
            { requiredKeys: [] },
          ),
        }),
      ),
      cable: fc.record(
        {
          line: stated("mm²"),
          cpc: stated("mm²"),
          length: stated("m"),
          methods: fc.uniqueArray(fc.constantFrom(...REFERENCE_METHODS), { minLength: 1, maxLength: 3 }),
        },
        { requiredKeys: [] },
      ),
      designCurrent: stated("A"),
      readings: fc.record(
        {
          r1: reading("Ω"),
          r1r2: reading("Ω"),
          zs: reading("Ω"),
          insulationLiveEarth: reading("MΩ"),
          temperature: reading("°C"),
          polarity: fc.oneof(fc.constantFrom("correct", "incorrect"), notKnown),
        },
        { requiredKeys: [] },
      ),
    },
    optional,
  );

/** Files of every shape the schema allows, with readings of every kind. */
export const arbitraryFile: fc.Arbitrary<InspectionFile> = fc
  .record({
    circuits: fc.tuple(circuit("c1"), circuit("c2"), circuit("c3")),
    earthing: fc.oneof(fc.constantFrom(...EARTHING_SYSTEMS), notKnown),
    ze: reading("Ω"),
    voltage: reading("V"),
    bond: stated("mm²"),
    note: words,
  })
  .map(
    ({ circuits, earthing, ze, voltage, bond, note }) =>
      ({
        ...smallestFile(),
        instruments: [{ id: "m", kind: "tester", serial: "1", accuracy: { loop: "±(5 % + 3 digits)" } }],
        supply: {
          earthing,
          nominalVoltage: "230 V",
          bonding: [{ id: "w", to: "water", size: bond }],
          readings: { ze, voltage },
        },
        boards: [{ id: "b", name: note, fedFrom: "supply", circuits }],
      }) as unknown as InspectionFile,
  );
