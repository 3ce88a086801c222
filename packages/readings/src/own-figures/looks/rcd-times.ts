import type { Path } from "@good-grounds/core";
import type { ResidualDevice } from "@good-grounds/inspection";
import { sameShown } from "../equal.ts";
import { grouped, largestOf } from "../grouped.ts";
import { type Found, type Job, type Look, WEIGHT } from "../look.ts";
import { type Figure, figureOf } from "../rows.ts";
import { atLeastOf, sameDigits, someAlike } from "../statistics/chances.ts";
import { listed, number } from "../words.ts";

interface Device {
  readonly path: Path;
  readonly id: string | undefined;
  readonly board: string;
  readonly name: string;
  readonly atRated: Figure | undefined;
  readonly atFive: Figure | undefined;
}

/** Operating times of sound devices of one kind are spread at least this much, s. */
const SPREAD = 0.003;

/** Every residual device once, those of boards and those of circuits. */
function devicesOf({ installation }: Job): readonly Device[] {
  const of = (device: ResidualDevice, board: string, name: string): Device => ({
    path: device.path,
    id: device.id,
    board,
    name,
    atRated: figureOf(device.timeAtRated, "rcd-time"),
    atFive: figureOf(device.timeAtFive, "rcd-time"),
  });
  return installation.boards.flatMap((board) => [
    ...board.rcds.map((device) => of(device, board.id, `RCD ${device.id ?? ""} of ${board.name}`)),
    ...board.circuits.flatMap((circuit) =>
      circuit.residual.devices
        .filter(({ path }) => path.at(-1) === "own")
        .map((device) => of(device, board.id, `circuit ${circuit.designation} (${circuit.description})`)),
    ),
  ]);
}

/** The same operating time on separate devices. */
function alike(devices: readonly Device[]): readonly Found[] {
  const ids = new Set<string>();
  // A device that stands on several circuits under one id is one device.
  const separate = devices.filter(({ id, board, path }) => {
    if (id === undefined || path.at(-1) !== "own") return true;
    const key = `${board} ${id}`;
    return !ids.has(key) && ids.add(key);
  });
  const timed = separate.flatMap((device) =>
    device.atRated === undefined ? [] : [{ device, figure: device.atRated }],
  );
  const largest = largestOf(grouped(timed, ({ figure }) => Math.round(figure.value * 1e7)));
  if (largest.length < 2) return [];
  const resolution = timed.reduce((most, { figure }) => Math.max(most, figure.resolution), 0);
  return [
    {
      words: `${largest[0]?.figure.leaf.detail.text} stands for ${largest.length} of ${timed.length} devices: ${listed(largest.slice(0, 5).map(({ device }) => device.name))}${largest.length > 5 ? " and more" : ""}.`,
      numbers: [
        number("devices with a time", String(timed.length)),
        number("alike to the last digit", String(largest.length)),
      ],
      readings: largest.map(({ figure }) => figure.leaf),
      chance: Math.min(1, 2 * someAlike(largest.length, timed.length, sameDigits(SPREAD, resolution))),
    },
  ];
}

/** The time at the rated current and at five times it alike to the digit: the second is meant to be much shorter. */
function alikeAtFive(devices: readonly Device[]): readonly Found[] {
  const both = devices.flatMap(({ name, atRated, atFive }) =>
    atRated === undefined || atFive === undefined ? [] : [{ name, atRated, atFive }],
  );
  const equal = both.filter(({ atRated, atFive }) => sameShown(atRated.value, atFive.value, atRated.resolution));
  if (equal.length === 0) return [];
  const chances = both.map(({ atRated }) => sameDigits(SPREAD, atRated.resolution));
  return [
    {
      words: `The time at five times the rated current is that at the rated current to the last digit: ${listed(equal.slice(0, 5).map(({ name }) => name))}.`,
      numbers: [number("devices with both times", String(both.length)), number("alike", String(equal.length))],
      readings: equal.flatMap(({ atRated, atFive }) => [atRated.leaf, atFive.leaf]),
      chance: Math.min(1, 2 * atLeastOf(chances, equal.length)),
    },
  ];
}

/** One device, known by its id, with different times on the circuits it serves. */
function oneDevice(devices: readonly Device[]): readonly Found[] {
  const identified = devices.filter(({ id }) => id !== undefined);
  return [...grouped(identified, ({ board, id }) => `${board} ${id}`).values()].flatMap((same) => {
    const figures = same.flatMap(({ atRated }) => (atRated === undefined ? [] : [atRated]));
    const texts = new Set(figures.map(({ leaf }) => leaf.detail.text));
    if (figures.length < 2 || texts.size < 2) return [];
    return [
      {
        words: `Device ${same[0]?.id} has ${texts.size} times on the circuits it serves: ${listed([...texts].slice(0, 5))}. It is one device.`,
        numbers: [
          number("circuits with a time", String(figures.length)),
          number("different times", String(texts.size)),
        ],
        readings: figures.map(({ leaf }) => leaf),
        chance: null,
        weight: WEIGHT.odd,
      },
    ];
  });
}

/** Operating times that are alike where devices are not, or differ where the device is one. */
export const rcdTimes: Look = {
  id: "rcd-times",
  title: "RCD times alike on separate devices, or different for one",
  test: "Counts devices with the same operating time to the last digit, times at the rated and at five times the rated current that are the same, and devices named on several circuits with different times.",
  assumed: ["operating times of sound devices are spread by 3 ms or more; common practice"],
  innocent: [
    "one device serves the group and its time was written to every circuit",
    "the test was repeated and each result written down",
    "the instrument shows whole milliseconds only",
  ],
  look(job) {
    const devices = devicesOf(job);
    if (devices.every(({ atRated }) => atRated === undefined)) return { because: "no RCD has an operating time" };
    return [...alike(devices), ...alikeAtFive(devices), ...oneDevice(devices)];
  },
};
