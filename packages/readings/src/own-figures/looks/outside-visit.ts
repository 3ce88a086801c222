import type { Entry } from "../entries.ts";
import { type Look, WEIGHT } from "../look.ts";
import { number } from "../words.ts";

/** Readings with a time at which nobody was there. */
export const outsideVisit: Look = {
  id: "outside-visit",
  title: "Readings outside the visits",
  test: "Holds the time of every reading against the days of the visits, and against arrival and departure where they are recorded.",
  assumed: [],
  innocent: [
    "readings typed in afterwards, with the time of typing",
    "the clock of a phone was wrong, or its time zone",
    "a visit was left out, or its times were written from memory",
  ],
  look({ entries, installation }) {
    const timed = entries.filter(({ at }) => at !== undefined);
    if (timed.length === 0) return { because: "no reading has a time" };
    const visits = installation.visits.map(({ date, arrived, left }) => ({
      date,
      from: arrived === undefined ? Number.NEGATIVE_INFINITY : Date.parse(arrived),
      to: left === undefined ? Number.POSITIVE_INFINITY : Date.parse(left),
      bounded: arrived !== undefined && left !== undefined,
    }));
    // A visit with both its times is judged by them, and may go past midnight; another by its day.
    const inside = ({ at, time }: Entry) =>
      visits.some(
        ({ date, from, to, bounded }) =>
          (bounded || time?.slice(0, 10) === date) && (at as number) >= from && (at as number) <= to,
      );
    const outside = timed.filter((entry) => !inside(entry));
    if (outside.length === 0) return [];
    const times = outside.map(({ time }) => String(time)).sort();
    return [
      {
        words: `${outside.length} of ${timed.length} readings have a time at which no visit took place, ${times[0]}${times.length > 1 ? ` to ${times.at(-1)}` : ""}.`,
        numbers: [
          number("readings with a time", String(timed.length)),
          number("outside the visits", String(outside.length)),
        ],
        readings: [],
        chance: null,
        weight: WEIGHT.contradicts,
      },
    ];
  },
};
