import type { Chance } from "../../examples/simulate/chance.ts";
import type {
  RingFault,
  RingInput,
  RingPointReadings,
  RingReading,
} from "../../packages/readings/src/diagnosis/ring/index.ts";
import { inputOf, type TrueRing, ringOfTwoSizes as trueRing } from "./simulated-ring.ts";

/** What may be wrong with what was written down of a ring, or with what the test saw; the ring itself is as drawn. */
export interface WrittenKind {
  readonly name: string;
  /** Makes the input, and says which faults are right: those of one explanation, any of several. */
  readonly make: (chance: Chance) => { readonly input: RingInput; readonly right: readonly Named[] };
}

/** A fault by its kind and what names it. */
export type Named = Readonly<Record<string, unknown>> & { readonly kind: RingFault["kind"] };

const count = (chance: Chance) => 6 + Math.floor(chance.uniform() * 9);

/** A sound ring of 2.5/1.5 or 4/1.5 mm² whose length was measured to 3 %. */
function soundRing(chance: Chance, metres?: number): { readonly ring: TrueRing; readonly input: RingInput } {
  const ring = trueRing(chance, count(chance), metres);
  return { ring, input: withLength(inputOf(ring, chance), ring.metres * chance.between(0.97, 1.03)) };
}

function withLength(input: RingInput, metres: number): RingInput {
  return { ...input, length: { value: metres, deviation: 0.03 * metres } };
}

/** The ring with every resistance times a factor, read by the same kind of meter. */
function scaled(chance: Chance, factors: readonly [number, number, number]) {
  const ring = trueRing(chance, count(chance));
  const [line, neutral, cpc] = ring.perMetre;
  const perMetre = [line * factors[0], neutral * factors[1], cpc * factors[2]] as const;
  return { ring, input: withLength(inputOf({ ...ring, perMetre }, chance), ring.metres * chance.between(0.97, 1.03)) };
}

const ALUMINIUM = 28.264 / 17.241;

function moved(reading: RingReading, by: number): RingReading {
  const decimals = by > 1 ? 1 : 3;
  return {
    ...reading,
    shown: Number((reading.shown * by).toFixed(decimals)),
    resolution: Number((reading.resolution * by).toFixed(decimals)),
  };
}

const COLUMNS = ["r1", "rn", "r2", "line-neutral", "line-cpc"] as const;

function decimal(chance: Chance): ReturnType<WrittenKind["make"]> {
  const { input } = soundRing(chance);
  const column = COLUMNS[Math.floor(chance.uniform() * COLUMNS.length)] as (typeof COLUMNS)[number];
  const by = chance.uniform() < 0.5 ? 10 : 0.1;
  if (column === "r1" || column === "rn" || column === "r2") {
    return { input: { ...input, [column]: moved(input[column], by) }, right: [{ kind: "decimal-slipped", column }] };
  }
  const point = Math.floor(chance.uniform() * input.points.length);
  const key = column === "line-neutral" ? "lineNeutral" : "lineCpc";
  const points = input.points.map((one, i): RingPointReadings => {
    const reading = one[key];
    return i === point && reading !== undefined ? { ...one, [key]: moved(reading, by) } : one;
  });
  return { input: { ...input, points }, right: [{ kind: "decimal-slipped", column, point }] };
}

const rowOf = (name: string, ring: RingInput) => ({ name, r1: ring.r1, rn: ring.rn, r2: ring.r2, ring });

/** Two rings of one board, of lengths a quarter or more apart. */
function two(chance: Chance) {
  const first = soundRing(chance, chance.between(30, 55));
  const second = soundRing(chance, chance.between(70, 100));
  return chance.uniform() < 0.5 ? ([first.input, second.input] as const) : ([second.input, first.input] as const);
}

export const WRITTEN_KINDS: readonly WrittenKind[] = [
  {
    name: "aluminium written as copper",
    make: (chance) => ({
      input: {
        ...scaled(chance, [ALUMINIUM, ALUMINIUM, ALUMINIUM]).input,
        otherMetal: { metal: "aluminium", ratio: ALUMINIUM },
      },
      right: [{ kind: "other-metal", metal: "aluminium" }],
    }),
  },
  {
    name: "length written a third too short or half too long",
    make(chance) {
      const { ring, input } = soundRing(chance);
      const part = chance.uniform() < 0.5 ? chance.between(0.55, 0.7) : chance.between(1.4, 1.7);
      return { input: withLength(input, ring.metres * part), right: [{ kind: "other-length" }] };
    },
  },
  ...(["r1", "rn"] as const).map(
    (end): WrittenKind => ({
      name: `columns exchanged, ${end} and r2`,
      make(chance) {
        const { input } = soundRing(chance);
        return {
          input: { ...input, [end]: input.r2, r2: input[end] },
          right: [{ kind: "columns-exchanged", columns: [end, "r2"] }],
        };
      },
    }),
  ),
  {
    name: "lists exchanged, line to neutral and line to cpc",
    make(chance) {
      const { input } = soundRing(chance);
      const points = input.points.map(
        ({ lineNeutral, lineCpc, ...one }): RingPointReadings => ({
          ...one,
          ...(lineCpc === undefined ? {} : { lineNeutral: lineCpc }),
          ...(lineNeutral === undefined ? {} : { lineCpc: lineNeutral }),
        }),
      );
      return {
        input: { ...input, points },
        right: [{ kind: "columns-exchanged", columns: ["line-neutral", "line-cpc"] }],
      };
    },
  },
  { name: "decimal slipped", make: decimal },
  {
    name: "rows exchanged between two rings",
    make(chance) {
      const [a, b] = two(chance);
      const ends = ({ r1, rn, r2 }: RingInput) => ({ r1, rn, r2 });
      const [here, there] = [
        { ...a, ...ends(b) },
        { ...b, ...ends(a) },
      ];
      return { input: { ...here, otherRows: [rowOf("2", there)] }, right: [{ kind: "rows-exchanged", circuit: "2" }] };
    },
  },
  {
    name: "row copied from another ring",
    make(chance) {
      const [a, b] = two(chance);
      const { r1, rn, r2 } = b;
      return { input: { ...a, r1, rn, r2, otherRows: [rowOf("2", b)] }, right: [{ kind: "row-copied", circuit: "2" }] };
    },
  },
  {
    name: "cpc missing",
    make(chance) {
      const { input } = soundRing(chance);
      const open: RingReading = { ...input.r2, shown: 99.9, resolution: 0.1, bound: "above" };
      const points = input.points.map((one) => ({ ...one, lineCpc: open }));
      return { input: { ...input, r2: open, points }, right: [{ kind: "absent" }] };
    },
  },
  {
    name: "cpc broken in a leg, the break bridged by other metal of 0.3 to 2 Ω",
    make(chance) {
      const ring = trueRing(chance, count(chance));
      const leg = Math.floor(chance.uniform() * (ring.points.length + 1));
      const planted = { kind: "joint", conductor: "cpc", leg, ohms: 10 ** chance.between(-0.5, 0.3) } as const;
      return { input: inputOf({ ...ring, planted }, chance), right: [{ kind: "joint", conductor: "cpc" }] };
    },
  },
  {
    name: "other metal along the cpc, which leaves it 0.3 to 0.8 of its resistance",
    make: (chance) => ({
      input: scaled(chance, [1, 1, chance.between(0.3, 0.8)]).input,
      right: [{ kind: "parallel-path" }],
    }),
  },
  {
    name: "an offset of 1 to 3 Ω in r2 that no leads have",
    make(chance) {
      const { input } = soundRing(chance);
      const shown = Number((input.r2.shown + chance.between(1, 3)).toFixed(2));
      return {
        input: { ...input, r2: { ...input.r2, shown } },
        right: [
          { kind: "misread", column: "r2" },
          { kind: "decimal-slipped", column: "r2" },
        ],
      };
    },
  },
];
