import type { Measured, Unit } from "@good-grounds/core";
import { isKnownFact } from "@good-grounds/core";
import { grouped } from "../grouped.ts";
import { type Look, WEIGHT } from "../look.ts";
import { listed, number } from "../words.ts";

/** Values up to a tenth above the end of a range may be its margin. */
const CLEARLY_ABOVE = 1.1;

/** Ends of the insulation range that differ, or a value above the end, from one instrument at one test voltage. */
export const mixedRangeEnds: Look = {
  id: "mixed-range-ends",
  title: "One instrument ends its range in different places",
  test: 'Collects the ends of range (such as ">999 MΩ") that one instrument shows at one insulation test voltage, and the highest value it shows.',
  assumed: ["a display ends at one value for one test voltage"],
  innocent: [
    "two instruments were used and the file names one",
    "circuits were tested at different voltages",
    "an end of range was written from habit",
  ],
  look(job) {
    const several = job.installation.instruments.length > 1;
    const taken = job.rows.flatMap(({ circuit }) => {
      const { insulationVoltage, insulationLiveLive, insulationLiveEarth } = circuit.readings;
      const voltage = isKnownFact(insulationVoltage) ? insulationVoltage.word : "not recorded";
      return [insulationLiveLive, insulationLiveEarth].flatMap((leaf) =>
        leaf.kind !== "measured" || (leaf.detail.taken.instrument === undefined && several) ? [] : [{ leaf, voltage }],
      );
    });
    const groups = grouped(taken, ({ leaf, voltage }) => `${leaf.detail.taken.instrument ?? ""} ${voltage}`);
    const byInstrument = [...groups.values()].map((group) => group.map(({ leaf }): Measured<Unit> => leaf));
    const above = (leaves: readonly Measured<Unit>[]) => leaves.filter(({ detail }) => detail.bound === "above");
    if (byInstrument.every((leaves) => above(leaves).length === 0))
      return { because: "no insulation resistance at the end of a range with its instrument" };
    return byInstrument.flatMap((leaves) => {
      const ends = above(leaves);
      const lowest = ends.reduce<number>((least, { value }) => Math.min(least, value), Number.POSITIVE_INFINITY);
      const beyond = leaves.filter(({ detail, value }) => detail.bound === "exact" && value > lowest * CLEARLY_ABOVE);
      const shown = [...new Set(ends.map(({ detail }) => detail.text))];
      const values = new Set(ends.map(({ value }) => value));
      if (values.size < 2 && beyond.length === 0) return [];
      const texts = [...shown, ...beyond.slice(0, 3).map(({ detail }) => detail.text)];
      return [
        {
          words: `The same instrument shows ${listed(texts)}: its range ends in one place.`,
          numbers: [
            number("ends of range", shown.join(", ")),
            number("values above the lowest end", String(beyond.length)),
          ],
          readings: [
            ...ends.filter(({ value }) => value === lowest),
            ...ends.filter(({ value }) => value !== lowest),
            ...beyond,
          ],
          chance: null,
          weight: WEIGHT.odd,
        },
      ];
    });
  },
};
