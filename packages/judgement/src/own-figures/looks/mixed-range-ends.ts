import type { Measured, Unit } from "@good-grounds/core";
import { isKnownFact } from "@good-grounds/core";
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
    const byInstrument = new Map<string, Measured<Unit>[]>();
    const several = job.installation.file.instruments.length > 1;
    for (const { circuit } of job.rows) {
      const { insulationVoltage, insulationLiveLive, insulationLiveEarth } = circuit.readings;
      for (const leaf of [insulationLiveLive, insulationLiveEarth]) {
        if (leaf.kind !== "measured") continue;
        const { instrument } = leaf.detail.taken;
        if (instrument === undefined && several) continue;
        const key = `${instrument ?? ""} ${isKnownFact(insulationVoltage) ? insulationVoltage.word : "500 V"}`;
        byInstrument.set(key, [...(byInstrument.get(key) ?? []), leaf]);
      }
    }
    const above = (leaves: readonly Measured<Unit>[]) => leaves.filter(({ detail }) => detail.bound === "above");
    if ([...byInstrument.values()].every((leaves) => above(leaves).length === 0))
      return { because: "no insulation resistance at the end of a range with its instrument" };
    return [...byInstrument.values()].flatMap((leaves) => {
      const ends = above(leaves);
      const lowest = Math.min(...ends.map(({ value }) => value));
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
