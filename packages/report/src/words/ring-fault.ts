import { RING } from "../locales/ring-en.ts";
import type { RingBandData, RingData, RingFaultData, RingPlaceData } from "./ring-data.ts";

type Names = readonly string[];

/** What an explanation says, as one sentence without its end. */
export function storyWords(faults: readonly RingFaultData[], names: Names): string {
  if (faults.length === 0) return RING.fault.sound;
  return RING.together(faults.map((fault) => faultWords(fault, names)));
}

function faultWords(fault: RingFaultData, names: Names): string {
  switch (fault.kind) {
    case "open":
      return RING.placed(RING.fault.open(fault.conductors), placeWords(fault.place, names));
    case "joint":
      return RING.placed(RING.fault.joint(fault.conductor, ohms(fault.ohms)), placeWords(fault.place, names));
    case "interconnection":
      return bridgeWords(fault, names);
    case "crossed-in-leg":
      return RING.placed(RING.fault.crossedInLeg(fault.pair), placeWords(fault.place, names));
    case "crossed-rings":
      return RING.fault.crossedRings;
    case "leads-not-nulled":
      return RING.fault.leads(fault.readings, ohms(fault.ohms));
    case "same-ends-joined":
      return RING.fault.sameEnds(fault.pairs);
    case "other-cpc":
      return RING.fault.otherCpc(String(fault.size));
    case "spur":
      return RING.fault.spur(
        nameOf(fault.point, names),
        fault.metres === undefined ? ohms(fault.ohms) : metres(fault.metres),
      );
    case "terminal":
      return RING.fault.terminal(nameOf(fault.point, names), fault.conductor, ohms(fault.ohms));
    case "swapped":
      return RING.fault.swapped(nameOf(fault.point, names), fault.pair);
    case "off":
      return RING.fault.off(nameOf(fault.point, names), fault.conductor);
  }
}

function bridgeWords({ from, to, metres: long }: Extract<RingFaultData, { kind: "interconnection" }>, names: Names) {
  const words = RING.fault.bridge(long === undefined ? "" : metres(long));
  if (from === undefined || to === undefined) return RING.placed(words, RING.placeOpen);
  return RING.fault.bridged(words, placeWords(from, names), placeWords(to, names));
}

/** Where something lies: in metres with the band, and between which points. */
function placeWords(place: RingPlaceData | undefined, names: Names): string {
  if (place === undefined) return RING.placeOpen;
  const [low, high] = [Math.min(...place.legs), Math.max(...place.legs)];
  if (low <= 0 && high >= names.length) return RING.placeOpen;
  const stop = (k: number) => (k < 0 || k >= names.length ? RING.board : nameOf(k, names));
  const between = RING.between(stop(low - 1), stop(high));
  if (place.metres === undefined) return RING.round(banded(place.part, RING.part), between);
  return RING.at(metres(place.metres), between);
}

export function nameOf(point: number, names: Names): string {
  return names[point] ?? String(point + 1);
}

function banded({ value, low, high }: RingBandData, print: (value: number) => string): string {
  return RING.about(print(value), print(low), print(high));
}

const ohms = (band: RingBandData) => banded(band, RING.ohms);
const metres = (band: RingBandData) => banded(band, RING.metres);

/** A name for an explanation that other output refers to it by: "spur-at-socket-5", "line-open". */
export function storyId(faults: readonly RingFaultData[], names: Names): string {
  return faults.length === 0 ? "sound-ring" : faults.map((fault) => faultId(fault, names)).join("-and-");
}

function faultId(fault: RingFaultData, names: Names): string {
  switch (fault.kind) {
    case "open":
      return `${fault.conductors.join("-")}-open`;
    case "joint":
      return `joint-in-${fault.conductor}`;
    case "interconnection":
      return "ring-bridged";
    case "crossed-in-leg":
      return `${fault.pair}-crossed-in-ring`;
    case "leads-not-nulled":
      return `leads-not-nulled-for-${fault.readings}`;
    case "other-cpc":
      return `cpc-of-${plainSize(fault.size)}`;
    case "spur":
      return `spur-at-${plain(fault.point, names)}`;
    case "terminal":
      return `poor-${fault.conductor}-connection-at-${plain(fault.point, names)}`;
    case "swapped":
      return `${fault.pair}-swapped-at-${plain(fault.point, names)}`;
    case "off":
      return `${fault.conductor}-off-at-${plain(fault.point, names)}`;
    default:
      return fault.kind;
  }
}

/** A size in plain letters and digits: "1-5-mm2". */
function plainSize(size: number): string {
  return `${String(size).replace(".", "-")}-mm2`;
}

/** A point's name in plain letters and digits, else its number. */
function plain(point: number, names: Names): string {
  const name = nameOf(point, names)
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");
  return name === "" ? `point-${point + 1}` : name;
}

/** The points' names for sentences: bare numbers as points, and names that stand more than once told apart. */
export function pointNames({ points }: RingData): Names {
  const times = new Map<string, number>();
  for (const { name } of points) times.set(name, (times.get(name) ?? 0) + 1);
  return points.map(({ name }, i) => {
    const said = /^\d/.test(name) ? RING.point(name) : name;
    return (times.get(name) ?? 0) > 1 ? `${said} (${i + 1})` : said;
  });
}
