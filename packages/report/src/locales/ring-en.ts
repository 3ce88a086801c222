import { MISFITS } from "./misfits-en.ts";

const CONDUCTOR = { line: "line", neutral: "neutral", cpc: "cpc" } as const;
const PAIR = {
  "line-neutral": "line and neutral",
  "line-cpc": "line and cpc",
  "neutral-cpc": "neutral and cpc",
} as const;
const END = { line: "r1", neutral: "rn", cpc: "r2" } as const;

type Conductor = keyof typeof CONDUCTOR;
type Pair = keyof typeof PAIR;

const listed = (words: readonly string[]) =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** A size with its band: "about 3.3 m (2.6 m to 4.1 m)". */
const about = (value: string, low: string, high: string) => `about ${value} (${low} to ${high})`;

/** Words about what explains the readings of a ring final circuit. */
export const RING = Object.freeze({
  title: (circuit: string) => `Circuit ${circuit}: readings of the ring that do not agree`,
  titleSound: (circuit: string) => `Circuit ${circuit}: a sound ring explains the readings`,
  titleSpur: (circuit: string) => `Circuit ${circuit}: the ring seems to have a spur`,
  circuit: (designation: string) => `Circuit ${designation}`,
  /** Above the readings of one ring, each beside what the leading explanation makes of it. */
  heading: "Ring final circuit: readings, and what the leading explanation makes of them",
  table: { at: "way round", lineNeutral: "L–N", lineCpc: "L–cpc", shown: "read", expected: "expected" },
  notClassified: "None of this is a classification. A reading is never changed to suit it: read again, or explain.",
  about,
  ohms: (value: number) => `${value.toFixed(2)} Ω`,
  metres: (value: number) => (value < 9.95 ? `${value.toFixed(1)} m` : `${Math.round(value)} m`),
  ratio: (value: number) => value.toFixed(2),
  part: (value: number) => `${Math.round(value * 100)} %`,
  open: "open",
  point: (name: string) => `point ${name}`,
  /** Which sockets a leg lies between. */
  board: "the board",
  between: (from: string, to: string) => `between ${from} and ${to}`,
  at: (size: string, between: string) => `${size} along from the outgoing end, ${between}`,
  round: (size: string, between: string) => `${size} of the way round from the outgoing end, ${between}`,
  placeOpen: "these readings do not say where",
  placed: (words: string, place: string) => `${words}, ${place}`,
  sound: "a sound ring",
  conductor: CONDUCTOR,
  pair: PAIR,
  listed,
  together: (faults: readonly string[]) => faults.join("; and "),
  drawn: (words: string, share: string) => `${words} (${share})`,
  noStory: "even so the readings lie further from it than the meter's uncertainty",
  /** A reading by the test it belongs to. */
  reading: (pair: Pair, point: string) => `${PAIR[pair].replace(" and ", " to ")} at ${point}`,
  end: (conductor: Conductor) => END[conductor],
  next: {
    "ends-apart": (conductor: Conductor) => `null the leads and read ${END[conductor]} again`,
    "cross-connected": (pair: Pair, terminals: Pair, point: string) =>
      `cross-connect the opposite ends of ${PAIR[pair]} and read between ${PAIR[terminals]} at ${point}`,
    "joined-at-one-end": (pair: Pair, point: string) =>
      `join ${PAIR[pair]} at the outgoing end only, leave the returning end apart, and read between them at ${point}`,
  },
  expected: (ohms: string) => (ohms === "open" ? ohms : `about ${ohms}`),
  places: (words: string, first: string, second: string) =>
    `${words}; ${first} if it lies at the likeliest place, ${second} at the next likeliest`,
  innocent: [
    "leads not nulled, or another pair of leads",
    "a poor contact of the probes at a socket",
    "sockets not listed in their order round the ring",
    "a spur, which is permitted",
  ],
  share: MISFITS.share,
});
