import { type Look, WEIGHT } from "../look.ts";
import { number } from "../words.ts";

/** Readings that make a stretch, and the seconds each takes at the least, writing it down included. */
const STRETCH = 20;
const LEAST_SECONDS = 5;

/** Readings entered faster than tests can be done. */
export const pace: Look = {
  id: "pace",
  title: "Readings entered faster than tests can be done",
  test: `Takes the times of readings in order and asks whether any ${STRETCH} in a row span less than ${LEAST_SECONDS} s each.`,
  assumed: [`no test with its writing down takes less than ${LEAST_SECONDS} s; common practice`],
  innocent: [
    "readings typed in from a paper sheet afterwards, with the time of typing",
    "readings brought over from the instrument's memory at once",
    "two people entering at the same time",
  ],
  look({ entries, installation }) {
    const times = entries.flatMap(({ at }) => (at === undefined ? [] : [at])).sort((a, b) => a - b);
    if (times.length < STRETCH) return { because: `fewer than ${STRETCH} readings with a time` };
    let count = 0;
    let seconds = 0;
    for (let from = 0, to = 0; to < times.length; to++) {
      while (to - from + 1 > STRETCH && spans(times, from, to)) from += 1;
      const span = ((times[to] as number) - (times[from] as number)) / 1000;
      if (to - from + 1 < STRETCH || spans(times, from, to)) continue;
      if (to - from + 1 > count) [count, seconds] = [to - from + 1, span];
    }
    if (count === 0) return [];
    const { visits } = installation;
    return [
      {
        words: `${count} readings were entered within ${seconds < 120 ? `${seconds.toFixed(0)} s` : `${(seconds / 60).toFixed(0)} min`}.`,
        numbers: [
          number("readings with a time", String(times.length)),
          number("seconds for each", (seconds / (count - 1)).toFixed(1)),
          number("visits", String(visits.length)),
        ],
        readings: [],
        chance: null,
        weight: WEIGHT.odd,
      },
    ];
  },
};

/** Whether a stretch of readings took at least as long as tests take. */
function spans(times: readonly number[], from: number, to: number): boolean {
  return (times[to] as number) - (times[from] as number) >= (to - from) * LEAST_SECONDS * 1000;
}
