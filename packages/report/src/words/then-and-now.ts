import {
  type AgainstEarlier,
  type ChangeSilence,
  type CircuitAt,
  type Evidence,
  isKnown,
  nodesOf,
  printQuantity,
  type ReadingChange,
  type ThenAndNow,
  type Trend,
} from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { EARLIER } from "../locales/earlier-en.ts";
import { WORDS } from "../locales/en.ts";
import { placeWords } from "./place.ts";

/** A comparison with its place, ready for a line or a row. */
export interface ChangeLine {
  readonly where: string;
  readonly label: string;
  readonly past: string;
  readonly now: string;
  readonly words: string;
  readonly change: ReadingChange;
}

/** Every comparison with one earlier inspection: supply, boards, circuits in the order of the present file. */
export function changeLines(against: AgainstEarlier, installation: Installation): readonly ChangeLine[] {
  return [
    ...against.supply.map((change) => changeLine(WORDS.supply, change)),
    ...against.boards.flatMap(({ path, readings }) =>
      readings.map((change) => changeLine(placeWords(path, installation), change)),
    ),
    ...against.circuits.flatMap(({ past, now, readings }) => {
      const [then, here] = [past[0] as CircuitAt, now[0] as CircuitAt];
      const name = circuitName(here);
      const was = circuitName(then);
      return readings.map((change) => changeLine(was === name ? name : `${name} (${EARLIER.was(was)})`, change));
    }),
  ];
}

function changeLine(where: string, change: ReadingChange): ChangeLine {
  const { reading, about, notes, past, now } = change;
  const whole = reading === "zs" && notes.includes("as-a-whole");
  const label = whole || change.why === "supply-not-known" ? EARLIER.wholeZs : EARLIER.reading[reading];
  return {
    where,
    label: about === "" ? label : `${label}, ${about}`,
    past: sideWords(past),
    now: sideWords(now),
    words: changeWords(change),
    change,
  };
}

/** What the display showed; of the circuit's part of a loop, both displays it is the difference of. */
function sideWords(evidence: Evidence<"ohm">): string {
  if (!isKnown(evidence)) return WORDS.notKnown;
  const shown = [...nodesOf(evidence)].flatMap((node) => (node.kind === "measured" ? [node.detail.text] : []));
  return shown.length === 0 ? printQuantity(evidence.value, "ohm") : shown.join(EARLIER.less);
}

function changeWords({ change, why, scale, amount, standard, past }: ReadingChange): string {
  const verdict = EARLIER.change[change];
  if (why !== null) return `${verdict}: ${EARLIER.silence[why]}`;
  if (scale === "ratio")
    return `${verdict}: ${EARLIER.factor(digits(Math.exp(Math.abs(amount))), digits(Math.exp(2 * standard)))}`;
  const moved = `${amount < 0 ? "−" : "+"}${ohms(Math.abs(amount))}`;
  const at20 = past.kind === "computed" ? EARLIER.at20 : "";
  return `${verdict}: ${EARLIER.amount(`${moved}${at20}`, ohms(2 * standard))}`;
}

/** Ohms to the hundredth where a display would show them, more coarsely above. */
function ohms(value: number): string {
  return value < 10 ? `${value.toFixed(2)} Ω` : printQuantity(value, "ohm");
}

/** A plain factor with two digits, whole numbers from ten on. */
function digits(value: number): string {
  if (!Number.isFinite(value) || value >= 1e4) return "more than 10,000";
  return value >= 10 ? String(Math.round(value)) : Number(value.toPrecision(2)).toString();
}

function circuitName({ board, designation, description }: CircuitAt): string {
  return `${board}, ${designation}: ${description}`;
}

function circuitNames(list: readonly CircuitAt[]): string {
  return list.map(circuitName).join(" and ");
}

/** Circuits divided or joined, each as a sentence. */
export function dividedLines({ circuits }: AgainstEarlier): readonly string[] {
  return circuits.flatMap(({ kind, past, now, confidence }) => {
    if (kind === "same") return [];
    const [whole, pieces] = kind === "split" ? [past, now] : [now, past];
    const words = kind === "split" ? EARLIER.split(circuitNames(pieces)) : EARLIER.merged(circuitNames(pieces));
    return [`${circuitNames(whole)}: ${words} (${EARLIER.sure(Math.floor(confidence * 100))})`];
  });
}

/** How many readings have changed, have not, or cannot be told and why. */
export function countWords(changes: readonly ChangeLine[]): string {
  const open = new Map<ChangeSilence, number>();
  for (const { change } of changes) if (change.why !== null) open.set(change.why, (open.get(change.why) ?? 0) + 1);
  const within = changes.filter(({ change }) => change.change === "within").length;
  return EARLIER.counts(changes.filter(hasChanged).length, within, [...open]);
}

export function hasChanged({ change: { change } }: ChangeLine): boolean {
  return change === "up" || change === "down";
}

/** What comparisons rest on beside the readings, each thing once; empty where it is nothing. */
export function restsOn(changes: readonly ChangeLine[]): string {
  const notes = new Set(changes.flatMap(({ change }) => change.notes));
  return notes.size === 0 ? "" : `${EARLIER.restOn}: ${[...notes].map((note) => EARLIER.note[note]).join("; ")}.`;
}

/** Every pair of circuits held to be the same, with how sure that is and what speaks for and against. */
export function matchLines({ circuits }: AgainstEarlier): readonly string[] {
  return circuits.flatMap(({ kind, past, now, confidence, because }) => {
    if (kind !== "same") return [];
    const traits = (sign: number) =>
      because
        .filter(({ weight }) => sign * weight > 0.5)
        .sort((a, b) => sign * (b.weight - a.weight))
        .map(({ trait }) => EARLIER.trait[trait])
        .join(", ");
    const sure = EARLIER.sure(Math.floor(confidence * 100));
    return [
      `${circuitNames(now)} ${EARLIER.was(circuitNames(past))} (${sure}: ${EARLIER.speaks(traits(1), traits(-1))})`,
    ];
  });
}

/** What was found of the circuits, in one line. */
export function matchedWords({ circuits, unsettled, onlyThen, onlyNow }: AgainstEarlier): string {
  const same = circuits.filter(({ kind }) => kind === "same").length;
  return `${EARLIER.matched(same, circuits.length - same, unsettled.length, onlyThen.length, onlyNow.length)}.`;
}

/** Groups and circuits without a counterpart, each with its label. */
export function leftOver(against: AgainstEarlier): readonly (readonly [label: string, words: string])[] {
  const { unsettled, onlyThen, onlyNow } = against;
  return [
    ...unsettled.map(
      ({ past, now }) => [EARLIER.unsettled, EARLIER.unsettledGroup(circuitNames(past), circuitNames(now))] as const,
    ),
    ...(onlyThen.length === 0 ? [] : [[EARLIER.onlyThen, onlyThen.map(circuitName).join("; ")] as const]),
    ...(onlyNow.length === 0 ? [] : [[EARLIER.onlyNow, onlyNow.map(circuitName).join("; ")] as const]),
  ];
}

/** A trend with its place and what it says, sentence by sentence. */
export interface TrendLine {
  readonly where: string;
  readonly label: string;
  readonly history: string;
  readonly says: readonly string[];
  /** Worth a line: it goes the wrong way, or its line meets the limit before the next inspection. */
  readonly notable: boolean;
  readonly trend: Trend;
}

export function trendLines({ trends }: ThenAndNow, installation: Installation): readonly TrendLine[] {
  return trends.map((trend) => {
    const circuit = installation.circuits.find(({ path }) => path === trend.path);
    return {
      where:
        circuit === undefined
          ? placeWords(trend.path, installation)
          : circuitName({ ...circuit, board: circuit.board.name }),
      label: EARLIER.reading[trend.reading],
      history: trend.points.map(({ on, text }) => `${text} (${on.slice(0, 4)})`).join(", "),
      says: trendSays(trend),
      notable: trend.direction === trend.worse || (trend.crossing?.expected ?? null) !== null,
      trend,
    };
  });
}

function trendSays({ perYear, direction, twoPoints, projected, crossing }: Trend): string[] {
  const says: string[] = [];
  const end = (value: number) =>
    value === 0 ? EARLIER.noLow : Number.isFinite(value) ? printQuantity(value, "ohm") : EARLIER.noHigh;
  if (perYear === null) says.push(EARLIER.trendOpen);
  else {
    const factor = EARLIER.perYear(digits(perYear.value), digits(perYear.low), digits(perYear.high));
    says.push(`${EARLIER.direction[direction]}: ${factor}${twoPoints ? `; ${EARLIER.twoPoints}` : ""}.`);
  }
  const last = projected.at(-1);
  if (last !== undefined) {
    const { on, value, low, high } = last;
    says.push(`${EARLIER.next(on, end(value), end(low), end(high))}.`);
  }
  if (crossing !== null) {
    const { limit, expected, earliest, latest } = crossing;
    const month = (on: string | null) => (on === null ? null : on.slice(0, 7));
    says.push(EARLIER.crossing(end(limit), month(expected), earliest.slice(0, 7), month(latest)));
  }
  return says;
}

/** How changes and bands are decided, in a sentence. */
export function methodWords({ level, assurance }: ThenAndNow): string {
  return EARLIER.method(String(Math.round(1 / level)), `${Math.round(assurance * 100)} %`);
}
