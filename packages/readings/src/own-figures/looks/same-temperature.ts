import { sameShown } from "../equal.ts";
import { type Look, WEIGHT } from "../look.ts";
import { number } from "../words.ts";

/** Fewer readings than this say nothing. */
const LEAST = 5;
/** The temperature resistance tables are drawn up for: a figure that is written down rather than read. */
const OF_TABLES = 20;
/** Months in which an unheated place is not at 20 °C. */
const COLD = new Set(["11", "12", "01", "02", "03"]);

/** Conductor temperatures that are all the one the tables are drawn up for, in the cold months, or all one over days. */
export const sameTemperature: Look = {
  id: "same-temperature",
  title: "The same conductor temperature everywhere",
  test: `Asks whether ${LEAST} or more temperatures written circuit by circuit are all the same, and are 20 °C from November to March, or come from three days or more.`,
  assumed: ["circuits in lofts, outer walls and outdoors are not at 20 °C in the cold months"],
  innocent: [
    "one temperature was taken for the job: write it once under its conditions",
    "a heated building, all of it indoors",
  ],
  look({ rows, installation }) {
    const own = rows.flatMap(({ circuit }) => {
      const { temperature } = circuit.readings;
      return temperature.kind === "measured" && temperature.detail.path[0] === "boards" ? [temperature] : [];
    });
    if (own.length < LEAST) return { because: `fewer than ${LEAST} temperatures written circuit by circuit` };
    const [first] = own;
    if (first === undefined || !own.every(({ value, detail }) => sameShown(value, first.value, detail.resolution)))
      return [];
    const days = new Set(own.flatMap(({ detail }) => detail.taken.at?.slice(0, 10) ?? []));
    const cold = first.value === OF_TABLES && COLD.has(installation.inspectedOn?.slice(5, 7) ?? "");
    if (!cold && days.size < 3) return [];
    return [
      {
        words: `All ${own.length} conductor temperatures are ${first.detail.text}.`,
        numbers: [number("temperatures", String(own.length)), number("days", String(Math.max(1, days.size)))],
        readings: own,
        chance: null,
        weight: WEIGHT.slight,
      },
    ];
  },
};
