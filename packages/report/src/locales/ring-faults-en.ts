import type { RingDrawingMark } from "../drawings/ring-drawing.ts";
import type { Conductor, Pair, RingBandData, RingPlaceData } from "../words/ring-band.ts";
import { RING } from "./ring-en.ts";

type Column = "r1" | "rn" | "r2" | "line-neutral" | "line-cpc";
type ReadWithLeads = "all" | "ends" | "points" | "r1" | "rn" | "r2";

/** What each kind of fault says of itself, with its sizes in Ω or m. Points are numbered from 0. */
interface SaidByKind {
  readonly open: { readonly conductors: readonly Conductor[]; readonly place: RingPlaceData | undefined };
  readonly absent: { readonly earthed: boolean };
  readonly joint: {
    readonly conductor: Conductor;
    readonly ohms: RingBandData;
    readonly place: RingPlaceData | undefined;
  };
  readonly interconnection: {
    readonly from: RingPlaceData | undefined;
    readonly to: RingPlaceData | undefined;
    readonly metres: RingBandData | undefined;
  };
  readonly "crossed-in-leg": { readonly pair: Pair; readonly place: RingPlaceData | undefined };
  readonly "crossed-rings": object;
  readonly "leads-not-nulled": { readonly readings: ReadWithLeads; readonly ohms: RingBandData };
  readonly "same-ends-joined": { readonly pairs: readonly Pair[] };
  /** Size of the protective conductor, mm², that is not the one written down. */
  readonly "other-cpc": { readonly size: number };
  /** Size of line and neutral, mm², that is not the one written down. */
  readonly "other-line": { readonly size: number };
  readonly "other-metal": { readonly metal: "copper" | "aluminium" };
  readonly "other-length": { readonly metres: number | undefined };
  readonly "parallel-path": { readonly ratio: RingBandData };
  readonly spur: {
    readonly point: number;
    readonly metres: RingBandData | undefined;
    readonly ohms: RingBandData;
  };
  readonly terminal: { readonly point: number; readonly conductor: Conductor; readonly ohms: RingBandData };
  readonly swapped: { readonly point: number; readonly pair: Pair };
  readonly off: { readonly point: number; readonly conductor: Conductor };
  readonly "columns-exchanged": { readonly columns: readonly [Column, Column] };
  readonly "decimal-slipped": { readonly column: Column; readonly point?: number; readonly meant: number };
  readonly misread: { readonly column: Column; readonly point?: number };
  readonly "row-copied": { readonly circuit: string };
  readonly "rows-exchanged": { readonly circuit: string };
  readonly "none-of-these": { readonly nearest: readonly RingFaultData[] };
}

type Kind = keyof SaidByKind;
type Of<K extends Kind> = SaidByKind[K] & { readonly kind: K };

/** A fault of a ring, or something harmless. */
export type RingFaultData = { readonly [K in Kind]: Of<K> }[Kind];

/** What the words need of numbers, places and points. */
export interface RingSay {
  readonly ohms: (band: RingBandData) => string;
  readonly metres: (band: RingBandData) => string;
  readonly ratio: (band: RingBandData) => string;
  readonly place: (place: RingPlaceData | undefined) => string;
  readonly point: (point: number) => string;
  /** A point in plain letters and digits. */
  readonly plain: (point: number) => string;
  readonly all: (faults: readonly RingFaultData[]) => string;
}

/** A kind of fault in words, as a name that other output refers to, and as marks of the drawing. */
interface FaultWords<F> {
  readonly words: (fault: F, say: RingSay) => string;
  readonly id: (fault: F, say: RingSay) => string;
  readonly marks?: (fault: F) => readonly RingDrawingMark[];
}

const { conductor: CONDUCTOR, pair: PAIR, listed } = RING;

const READ: Readonly<Record<ReadWithLeads, string>> = {
  all: "any of these readings",
  ends: "r1, rn and r2",
  points: "the readings at the points",
  r1: "r1",
  rn: "rn",
  r2: "r2",
};

const COLUMN: Readonly<Record<Column, string>> = {
  r1: "r1",
  rn: "rn",
  r2: "r2",
  "line-neutral": "line to neutral",
  "line-cpc": "line to cpc",
};

function readingAt({ column, point }: { readonly column: Column; readonly point?: number }, say: RingSay): string {
  return point === undefined ? COLUMN[column] : `${COLUMN[column]} at ${say.point(point)}`;
}

function readingId({ column, point }: { readonly column: Column; readonly point?: number }, say: RingSay): string {
  return point === undefined ? column : `${column}-at-${say.plain(point)}`;
}

function stretch(kind: "break" | "joint" | "crossed", place: RingPlaceData | undefined, label: string) {
  return place === undefined ? [] : [{ kind, ...place.part, label }];
}

function atPoint(point: number, label: string): readonly RingDrawingMark[] {
  return [{ kind: "point", point, label }];
}

/** A size in plain letters and digits: "1-5-mm2". */
const plainSize = (size: number) => `${String(size).replace(".", "-")}-mm2`;

const open: FaultWords<Of<"open">> = {
  words: ({ conductors, place }, say) =>
    RING.placed(
      `the ${listed(conductors.map((one) => CONDUCTOR[one]))} ${conductors.length > 1 ? "are" : "is"} open`,
      say.place(place),
    ),
  id: ({ conductors }) => `${conductors.join("-")}-open`,
  marks: ({ conductors, place }) => stretch("break", place, `${listed(conductors.map((one) => CONDUCTOR[one]))} open`),
};

const joint: FaultWords<Of<"joint">> = {
  words: ({ conductor, ohms, place }, say) =>
    RING.placed(
      `a loose joint of ${say.ohms(ohms)} in the ${CONDUCTOR[conductor]}${conductor === "cpc" ? ", or a break that other metal bridges" : ""}`,
      say.place(place),
    ),
  id: ({ conductor }) => `joint-in-${conductor}`,
  marks: ({ conductor, ohms, place }) =>
    stretch("joint", place, `joint in the ${CONDUCTOR[conductor]}, ${RING.ohms(ohms.value)}`),
};

const interconnection: FaultWords<Of<"interconnection">> = {
  words({ from, to, metres }, say) {
    const cable = metres === undefined ? "a cable" : `a cable ${say.metres(metres)} long`;
    const words = `${cable} bridges the ring`;
    if (from === undefined || to === undefined) return RING.placed(words, RING.placeOpen);
    return `${words}: one end ${say.place(from)}; the other ${say.place(to)}`;
  },
  id: () => "ring-bridged",
  marks({ from, to, metres }) {
    if (from === undefined || to === undefined) return [];
    const label = `bridge${metres === undefined ? "" : `, about ${RING.metres(metres.value)}`}`;
    return [{ kind: "bridge", from: from.part.value, to: to.part.value, label }];
  },
};

const spur: FaultWords<Of<"spur">> = {
  words: ({ point, metres, ohms }, say) =>
    `${say.point(point)} hangs on a spur of ${metres === undefined ? say.ohms(ohms) : say.metres(metres)}`,
  id: ({ point }, say) => `spur-at-${say.plain(point)}`,
  marks({ point, metres, ohms }) {
    const size = metres === undefined ? RING.ohms(ohms.value) : RING.metres(metres.value);
    return [{ kind: "spur", point, label: `spur, about ${size}` }];
  },
};

const terminal: FaultWords<Of<"terminal">> = {
  words: ({ point, conductor, ohms }, say) =>
    `a poor connection of ${say.ohms(ohms)} of the ${CONDUCTOR[conductor]} at ${say.point(point)}`,
  id: ({ point, conductor }, say) => `poor-${conductor}-connection-at-${say.plain(point)}`,
  marks: ({ point, conductor, ohms }) =>
    atPoint(point, `poor ${CONDUCTOR[conductor]} connection, ${RING.ohms(ohms.value)}`),
};

/** Every kind of fault of a ring in words. One that is new has its line in {@link SaidByKind} and its entry here. */
const RING_FAULTS: { readonly [K in Kind]: FaultWords<Of<K>> } = Object.freeze({
  open,
  joint,
  interconnection,
  spur,
  terminal,
  absent: {
    words: ({ earthed }) =>
      `the cpc is missing or connected at neither end${earthed ? "; the earth that the loop test found comes by something else" : ""}`,
    id: () => "cpc-absent",
  },
  "crossed-in-leg": {
    words: ({ pair, place }, say) => RING.placed(`${PAIR[pair]} change places within the ring`, say.place(place)),
    id: ({ pair }) => `${pair}-crossed-in-ring`,
    marks: ({ pair, place }) => stretch("crossed", place, `${PAIR[pair]} change places`),
  },
  "crossed-rings": {
    words: () => "the two ends at the board belong to two different rings",
    id: () => "crossed-rings",
  },
  "leads-not-nulled": {
    words: ({ readings, ohms }, say) => `leads of ${say.ohms(ohms)} were not nulled for ${READ[readings]}`,
    id: ({ readings }) => `leads-not-nulled-for-${readings}`,
  },
  "same-ends-joined": {
    words: ({ pairs }) =>
      `for the readings between ${listed(pairs.map((one) => PAIR[one]))} conductors of the same end were joined, not of opposite ends`,
    id: () => "same-ends-joined",
  },
  "other-cpc": {
    words: ({ size }) => `the cpc has ${size} mm² and not the size written down`,
    id: ({ size }) => `cpc-of-${plainSize(size)}`,
  },
  "other-line": {
    words: ({ size }) => `line and neutral have ${size} mm² and not the size written down`,
    id: ({ size }) => `line-of-${plainSize(size)}`,
  },
  "other-metal": {
    words: ({ metal }) => `the conductors are of ${metal} and not of the metal written down`,
    id: ({ metal }) => `conductors-of-${metal}`,
  },
  "other-length": {
    words: ({ metres }) =>
      `the ring is ${metres === undefined ? "" : `about ${RING.metres(metres)} `}long and not as written`,
    id: () => "length-wrong",
  },
  "parallel-path": {
    words: ({ ratio }, say) =>
      `other metal beside the cpc carries with it (conduit, armour, bonded metal): together they have ${say.ratio(ratio)} times the resistance of the line`,
    id: () => "path-beside-cpc",
  },
  swapped: {
    words: ({ point, pair }, say) => `${PAIR[pair]} are at each other's terminals at ${say.point(point)}`,
    id: ({ point, pair }, say) => `${pair}-swapped-at-${say.plain(point)}`,
    marks: ({ point, pair }) => atPoint(point, `${PAIR[pair]} swapped`),
  },
  off: {
    words: ({ point, conductor }, say) => `the ${CONDUCTOR[conductor]} is off its terminal at ${say.point(point)}`,
    id: ({ point, conductor }, say) => `${conductor}-off-at-${say.plain(point)}`,
    marks: ({ point, conductor }) => atPoint(point, `${CONDUCTOR[conductor]} off`),
  },
  "columns-exchanged": {
    words: ({ columns: [a, b] }) => `${COLUMN[a]} and ${COLUMN[b]} changed places in the schedule`,
    id: ({ columns }) => `${columns.join("-and-")}-exchanged`,
  },
  "decimal-slipped": {
    words: ({ meant, ...one }, say) =>
      `the decimal point of ${readingAt(one, say)} slipped, about ${RING.ohms(meant)} was meant`,
    id: (one, say) => `decimal-slipped-in-${readingId(one, say)}`,
  },
  misread: {
    words: (one, say) =>
      `${readingAt(one, say)} as written is not of this ring: misread, mistyped or of another circuit`,
    id: (one, say) => `misread-${readingId(one, say)}`,
  },
  "row-copied": {
    words: ({ circuit }) => `these readings are those of circuit ${circuit} to the digit: a row written twice`,
    id: ({ circuit }) => `row-of-circuit-${plainWord(circuit)}`,
  },
  "rows-exchanged": {
    words: ({ circuit }) => `r1, rn and r2 changed places with those of circuit ${circuit}`,
    id: ({ circuit }) => `rows-exchanged-with-circuit-${plainWord(circuit)}`,
  },
  "none-of-these": {
    words: ({ nearest }, say) =>
      `none of the explanations accounts for all of these readings; nearest is ${nearest.length === 0 ? RING.sound : say.all(nearest)}`,
    id: () => "none-of-these",
    marks: ({ nearest }) => nearest.flatMap(marksOf),
  },
});

/** The entry for a fault; the table is keyed by kind, so that entry and fault are of one kind. */
function entryOf(fault: RingFaultData): FaultWords<RingFaultData> {
  return RING_FAULTS[fault.kind] as unknown as FaultWords<RingFaultData>;
}

export const faultWords = (fault: RingFaultData, say: RingSay): string => entryOf(fault).words(fault, say);
export const faultId = (fault: RingFaultData, say: RingSay): string => entryOf(fault).id(fault, say);
export const marksOf = (fault: RingFaultData): readonly RingDrawingMark[] => entryOf(fault).marks?.(fault) ?? [];

/** A name in plain letters and digits; empty where it has none. */
export function plainWord(name: string): string {
  return name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");
}
