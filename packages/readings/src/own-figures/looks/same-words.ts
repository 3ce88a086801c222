import { grouped } from "../grouped.ts";
import { type Look, WEIGHT } from "../look.ts";
import { listed, number } from "../words.ts";

/** Fewer words than this are alike without anybody copying them. */
const LEAST_WORDS = 8;

const normal = (text: string) =>
  text
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();

/** Observations in the same words about different places. */
export const sameWords: Look = {
  id: "same-words",
  title: "The same words for different places",
  test: `Looks for observations of ${LEAST_WORDS} words or more that are the same, letter case and punctuation aside, at different places.`,
  assumed: [],
  innocent: [
    "the same thing was really found in each place",
    "a sentence prepared beforehand, with the place written beside it",
  ],
  look({ installation }) {
    const observations = installation.observations.flatMap(({ id, what, place }) =>
      what === undefined || place === undefined ? [] : [{ id, what, place }],
    );
    if (observations.length < 2) return { because: "fewer than two observations" };
    const long = observations.filter(({ what }) => normal(what).split(" ").length >= LEAST_WORDS);
    return [...grouped(long, ({ what }) => normal(what)).values()].flatMap((same) => {
      const places = [...new Set(same.map(({ place }) => place))];
      if (new Set(places.map(normal)).size < 2) return [];
      return [
        {
          words: `Observations ${listed(same.map(({ id }) => id))} are in the same words, at ${listed(places.slice(0, 5))}.`,
          numbers: [number("observations", String(same.length)), number("places", String(places.length))],
          readings: [],
          chance: null,
          weight: WEIGHT.slight,
        },
      ];
    });
  },
};
