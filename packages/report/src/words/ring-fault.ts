import { RING } from "../locales/ring-en.ts";
import { faultId, faultWords, plainWord, type RingFaultData, type RingSay } from "../locales/ring-faults-en.ts";
import type { RingBandData, RingPlaceData } from "./ring-band.ts";
import type { RingData } from "./ring-data.ts";

type Names = readonly string[];

/** What an explanation says, as one sentence without its end. */
export function storyWords(faults: readonly RingFaultData[], names: Names): string {
  return faults.length === 0 ? RING.sound : sayWith(names).all(faults);
}

/** A name for an explanation that other output refers to it by: "spur-at-socket-5", "line-open". */
export function storyId(faults: readonly RingFaultData[], names: Names): string {
  return faults.length === 0 ? "sound-ring" : faults.map((fault) => faultId(fault, sayWith(names))).join("-and-");
}

function sayWith(names: Names): RingSay {
  const say: RingSay = {
    ohms: (band) => banded(band, RING.ohms),
    metres: (band) => banded(band, RING.metres),
    ratio: (band) => banded(band, RING.ratio),
    place: (place) => placeWords(place, names),
    point: (point) => nameOf(point, names),
    plain: (point) => plainWord(nameOf(point, names)) || `point-${point + 1}`,
    all: (faults) => RING.together(faults.map((fault) => faultWords(fault, say))),
  };
  return say;
}

/** Where something lies: in metres with the band, and between which points. */
function placeWords(place: RingPlaceData | undefined, names: Names): string {
  if (place === undefined) return RING.placeOpen;
  const [low, high] = [Math.min(...place.legs), Math.max(...place.legs)];
  if (low <= 0 && high >= names.length) return RING.placeOpen;
  const stop = (k: number) => (k < 0 || k >= names.length ? RING.board : nameOf(k, names));
  const between = RING.between(stop(low - 1), stop(high));
  if (place.metres === undefined) return RING.round(banded(place.part, RING.part), between);
  return RING.at(banded(place.metres, RING.metres), between);
}

export function nameOf(point: number, names: Names): string {
  return names[point] ?? String(point + 1);
}

function banded({ value, low, high }: RingBandData, print: (value: number) => string): string {
  return RING.about(print(value), print(low), print(high));
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
