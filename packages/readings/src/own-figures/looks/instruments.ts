import { type Found, type Job, type Look, WEIGHT } from "../look.ts";
import { listed, number } from "../words.ts";

/** Days after which a check of an instrument is taken to be overdue: a year and a day. */
const MOST_DAYS = 366;
const DAY = 86_400_000;

function missing({ entries, installation }: Job): readonly Found[] {
  const { instruments } = installation;
  const without = entries.filter(({ instrument }) => instrument === undefined);
  if (without.length === 0) return [];
  return [
    {
      words:
        instruments.length === 0
          ? `The file names no instrument for its ${without.length} readings.`
          : `${without.length} of ${entries.length} readings do not say which of the ${instruments.length} instruments they were taken with.`,
      numbers: [number("readings", String(entries.length)), number("without an instrument", String(without.length))],
      readings: [],
      chance: null,
      weight: WEIGHT.slight,
    },
  ];
}

function overdue({ entries, installation }: Job): readonly Found[] {
  const { instruments, inspectedOn } = installation;
  const late = instruments.flatMap(({ id, kind, serial, checked }) => {
    const times = entries.flatMap(({ instrument, at }) => (instrument === id && at !== undefined ? [at] : []));
    const used = times.length > 0 || entries.some(({ instrument }) => instrument === id);
    if (checked === undefined || !used) return [];
    const last = times.reduce((a, b) => Math.max(a, b), times[0] ?? Date.parse(inspectedOn ?? checked));
    const days = Math.floor((last - Date.parse(checked)) / DAY);
    return days > MOST_DAYS || days < 0
      ? [{ words: `${[kind, serial].filter(Boolean).join(", ")}, checked ${checked}`, days }]
      : [];
  });
  if (late.length === 0) return [];
  return [
    {
      words: `The check of the instrument does not cover the day of the readings: ${listed(late.map(({ words }) => words))}.`,
      numbers: late.map(({ words, days }) =>
        number(words, days < 0 ? `checked ${-days} days later` : `${days} days before the last reading`),
      ),
      readings: [],
      chance: null,
      weight: WEIGHT.odd,
    },
  ];
}

/** Instruments that are not named, or whose check was overdue or came later. */
export const instruments: Look = {
  id: "instruments",
  title: "Instrument missing, or its check overdue",
  test: "Asks whether every reading has its instrument, and whether the last check of each instrument used lies within a year before its readings.",
  assumed: ["instruments are checked once a year; common practice"],
  innocent: [
    "the check was done and its date not brought up to date",
    "another instrument was used that day",
    "the maker's or firm's interval is longer",
  ],
  look(job) {
    if (job.entries.length === 0) return { because: "no readings" };
    return [...missing(job), ...overdue(job)];
  },
};
