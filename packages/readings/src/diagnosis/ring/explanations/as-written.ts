import type { Around, Explanation, Tried } from "../explanation.ts";
import type { Fault, Taken } from "../fault.ts";
import { fit, type Problem, problemOf } from "../fit.ts";
import { SOUND } from "../hypothesis.ts";
import { type Observed, observed as observedFrom, observedOf, type RingInput, type RingRow } from "../readings.ts";

/** A column or list of the schedule: a reading end to end, or the readings at the points between two conductors. */
type Column = "r1" | "rn" | "r2" | "line-neutral" | "line-cpc";

export interface ColumnsExchangedSaid {
  readonly kind: "columns-exchanged";
  readonly columns: readonly [Column, Column];
}

export interface DecimalSaid {
  readonly kind: "decimal-slipped";
  readonly column: Column;
  /** The point, where it is a reading at one. */
  readonly point?: number;
  /** What was meant, Ω. */
  readonly meant: number;
}

export interface MisreadSaid {
  readonly kind: "misread";
  readonly column: Column;
  readonly point?: number;
}

export interface RowSaid {
  readonly kind: "row-copied" | "rows-exchanged";
  /** Designation of the circuit whose readings stand here. */
  readonly circuit: string;
}

const COMMON_COLUMNS = 0.01;
const COMMON_DECIMAL = 0.02;
const COMMON_MISREAD = 0.01;
const COMMON_COPIED = 0.01;
const COMMON_EXCHANGED = 0.01;

/** Conductors of nearly one size read alike whichever column they stand in, as a logarithm of their ratio. */
const OF_TWO_SIZES = 0.2;

/** Columns and rows are tried for each other where a sound ring leaves so much more than chance, in squares of deviations. */
const STRAINED = 8;

const ENDS = ["r1", "rn", "r2"] as const;
const COLUMN_OF_END: readonly Column[] = ENDS;
const isPlain = ({ base }: Around, kind: string) => !base.hypothesis.faults.some(({ key }) => key.startsWith(kind));

function columnsFor(columns: readonly [Column, Column]): Fault<ColumnsExchangedSaid> {
  const [a, b] = columns.map((one) => COLUMN_OF_END.indexOf(one)) as [number, number];
  return {
    key: `columns ${columns.join(" ")}`,
    common: COMMON_COLUMNS,
    sizes: [],
    ofMethod: true,
    bears(model) {
      if (a < 0) model.exchangeLists();
      else model.writeColumns(ENDS.map((_, i) => (i === a ? b : i === b ? a : i)));
    },
    says: () => ({ kind: "columns-exchanged", columns }),
  };
}

export const columnsExchanged: Explanation<ColumnsExchangedSaid> = {
  id: "columns-exchanged",
  innocent: true,
  tried(around) {
    const { cpcRatio, points } = around.problem.input;
    if (around.base.cost < around.problem.observed.length + STRAINED) return [];
    if (cpcRatio === undefined || Math.abs(Math.log(cpcRatio.value)) < OF_TWO_SIZES || !isPlain(around, "columns"))
      return [];
    const sets: (readonly [Column, Column])[] = [
      ["r1", "r2"],
      ["rn", "r2"],
    ];
    if (points.some(({ lineNeutral, lineCpc }) => lineNeutral !== undefined && lineCpc !== undefined))
      sets.push(["line-neutral", "line-cpc"]);
    return sets.map((columns) => ({ fault: columnsFor(columns) }));
  },
};

/** −2 ln of what one of the last digit has of a reading's density at its middle. */
function ofOneDigit({ reading, deviation }: Observed): number {
  return 2 * Math.log(reading.resolution / (deviation * Math.sqrt(2 * Math.PI)));
}

const columnOf = ({ asked }: Observed): Column =>
  asked.point >= 0
    ? (asked.pair as Column)
    : asked.conductor === "line"
      ? "r1"
      : asked.conductor === "cpc"
        ? "r2"
        : "rn";

const placeOf = (one: Observed) => ({
  column: columnOf(one),
  ...(one.asked.point < 0 ? {} : { point: one.asked.point }),
});

/** One reading with its decimal point moved. */
function decimalOf(i: number, one: Observed, by: number, readings: number): Fault<DecimalSaid> {
  const { shown, resolution } = one.reading;
  const meant = observedFrom(one.asked, { ...one.reading, shown: shown * by, resolution: resolution * by });
  return {
    key: `decimal ${i} ${by}`,
    common: COMMON_DECIMAL / readings,
    ...(one.asked.point < 0 ? {} : { point: one.asked.point }),
    sizes: [],
    ofMethod: true,
    takes: (observed) => ({
      observed: observed.with(i, meant),
      cost: 2 * Math.log(meant.deviation / one.deviation / by),
    }),
    says: () => ({ kind: "decimal-slipped", ...placeOf(one), meant: meant.shown }),
  };
}

/** With the point moved a reading comes within this of what it is held against, and was further off before, as logarithms. */
const COMES_NEAR = 0.4;
const WAS_OFF = 1.5;

export const decimalSlipped: Explanation<DecimalSaid> = {
  id: "decimal-slipped",
  innocent: true,
  tried({ problem }) {
    const { observed } = problem;
    return observed.flatMap((one, i): readonly Tried<DecimalSaid>[] => {
      const near = roughly(one, problem);
      if (one.bound !== "exact" || !(one.shown > 0) || !(near > 0)) return [];
      const off = (by: number) => Math.abs(Math.log((one.shown * by) / near));
      if (off(1) < WAS_OFF) return [];
      return [0.1, 10, 0.01, 100]
        .filter((by) => off(by) < COMES_NEAR)
        .map((by) => ({ fault: decimalOf(i, one, by, observed.length) }));
    });
  },
};

/** What a reading should be by the others, roughly, Ω: by the other conductors' ends, or by the other points'. */
function roughly(one: Observed, { observed, input }: Problem): number {
  const others = observed.filter((other) => other !== one && other.bound === "exact");
  if (one.asked.point >= 0) {
    const alike = others.filter(({ asked }) => asked.point >= 0 && asked.pair === one.asked.pair);
    return middle(alike.map(({ shown }) => shown));
  }
  const ratio = input.cpcRatio?.value ?? 1;
  const share = (conductor: string | undefined) => (conductor === "cpc" ? ratio : 1);
  const ends = others.filter(({ asked }) => asked.point < 0);
  const own = share(one.asked.conductor);
  const byEnds = ends.map(({ asked, shown }) => (shown * own) / share(asked.conductor));
  const quarters = others.filter(({ asked }) => asked.pair === "line-neutral" && asked.point >= 0);
  return middle([...byEnds, ...(quarters.length > 0 ? [2 * own * middle(quarters.map(({ shown }) => shown))] : [])]);
}

function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

/** A reading that is none of this ring may be anything over three powers of ten. */
const ANYTHING = Math.log(1000);

/** One reading that was misread or mistyped and says nothing. */
function misreadOf(i: number, one: Observed, readings: number): Fault<MisreadSaid> {
  const density = 1 / (ANYTHING * Math.max(one.shown, one.reading.resolution));
  return {
    key: `misread ${i}`,
    common: COMMON_MISREAD / readings,
    ...(one.asked.point < 0 ? {} : { point: one.asked.point }),
    sizes: [],
    ofMethod: true,
    takes: (observed): Taken => ({
      observed: observed.with(i, { ...one, bound: "void" }),
      cost: Math.max(0, -2 * Math.log(one.deviation * Math.sqrt(2 * Math.PI) * density)),
    }),
    says: () => ({ kind: "misread", ...placeOf(one) }),
  };
}

/** Readings at points are tried where they lie so far off, in squares of deviations, and no more than so many. */
const STANDS_OUT = 12;
const MOST_MISREAD = 2;

export const misread: Explanation<MisreadSaid> = {
  id: "misread",
  innocent: true,
  lastly: true,
  tried({ problem: { observed }, base }) {
    const apart = (one: Observed, i: number) =>
      one.bound === "exact" ? ((one.shown - (base.expected[i] as number)) / one.deviation) ** 2 : 0;
    const points = observed
      .map((one, i) => ({ one, i, off: one.asked.point < 0 ? 0 : apart(one, i) }))
      .filter(({ off }) => off > STANDS_OUT && Number.isFinite(off))
      .sort((a, b) => b.off - a.off)
      .slice(0, MOST_MISREAD);
    const isOff = base.misfit > observed.length + STANDS_OUT;
    const ends = isOff ? observed.map((one, i) => ({ one, i })).filter(({ one }) => one.asked.point < 0) : [];
    return [...ends.filter(({ one }) => one.bound === "exact"), ...points].map(({ one, i }) => ({
      fault: misreadOf(i, one, observed.length),
    }));
  },
};

/** The same figures, to the digit, as stand at another circuit. */
function copiedFrom({ name }: RingRow, same: readonly number[], rows: number): Fault<RowSaid> {
  return {
    key: `copied ${name}`,
    common: COMMON_COPIED / rows,
    sizes: [],
    ofMethod: true,
    takes: (observed) => ({
      observed: observed.map((one, i): Observed => (same.includes(i) ? { ...one, bound: "void" } : one)),
      cost: same.reduce((sum, i) => sum + ofOneDigit(observed[i] as Observed), 0),
    }),
    says: () => ({ kind: "row-copied", circuit: name }),
  };
}

/** Readings of a row that equal those of another: r1, rn and r2, and those at the points where all are equal. */
function equalTo(row: RingRow, { observed, input }: Problem): readonly number[] {
  const ends = ENDS.map((end) => [input[end], row[end]] as const);
  if (!ends.every(([a, b]) => a.bound === "exact" && b.bound === "exact" && a.shown === b.shown)) return [];
  const others = row.ring === undefined ? [] : observedOf(row.ring);
  const isWhole =
    others.length === observed.length && observed.every(({ shown }, i) => shown === (others[i] as Observed).shown);
  return isWhole ? [...observed.keys()] : [0, 1, 2];
}

export const rowCopied: Explanation<RowSaid> = {
  id: "row-copied",
  innocent: true,
  tried({ problem, base }) {
    const { otherRows = [] } = problem.input;
    if (base.hypothesis.faults.length > 0) return [];
    return otherRows.flatMap((row) => {
      const same = equalTo(row, problem);
      return same.length === 0 ? [] : [{ fault: copiedFrom(row, same, otherRows.length) }];
    });
  },
};

/** The readings end to end stand in the row of another ring, and that ring's here. */
function exchangedWith(row: RingRow, problem: Problem, rows: number): Fault<RowSaid> | undefined {
  const { ring } = row;
  if (ring === undefined) return undefined;
  const { r1, rn, r2 } = problem.input;
  const costOf = (input: RingInput) => fit(problemOf(input, observedOf(input)), SOUND).cost;
  const there = costOf({ ...ring, r1, rn, r2 }) - costOf(ring);
  const here = ENDS.map((end, i) => observedFrom((problem.observed[i] as Observed).asked, row[end]));
  return {
    key: `exchanged ${row.name}`,
    common: COMMON_EXCHANGED / rows,
    sizes: [],
    ofMethod: true,
    takes: (observed) => ({ observed: [...here, ...observed.slice(ENDS.length)], cost: there }),
    says: () => ({ kind: "rows-exchanged", circuit: row.name }),
  };
}

const MOST_ROWS = 12;

export const rowsExchanged: Explanation<RowSaid> = {
  id: "rows-exchanged",
  innocent: true,
  tried({ problem, base }) {
    const { otherRows = [] } = problem.input;
    if (base.hypothesis.faults.length > 0 || base.cost < problem.observed.length + STRAINED) return [];
    const closed = otherRows.filter((row) => ENDS.every((end) => row[end].bound === "exact")).slice(0, MOST_ROWS);
    return closed.flatMap((row) => {
      const fault = exchangedWith(row, problem, closed.length);
      return fault === undefined ? [] : [{ fault }];
    });
  },
};
