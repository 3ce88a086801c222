import { CONDUCTOR_MATERIALS, isExact, isKnownFact, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { conductorResistance } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity, asksWord } from "../need.ts";

/** Greatest resistance of a conductor in Ω/m at 20 °C. */
export const resistancePerMetre = calculation({
  id: "conductor-resistance",
  title: "Conductor resistance per metre",
  formula: "BS EN 60228 at 20 °C",
  regulations: ["643.2.1"],
  needs: {
    area: asksQuantity(TERM.area, "2.5 mm²"),
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
  },
  compute({ area, material }, reckon) {
    const figure =
      isExact(area) && isKnownFact(material)
        ? conductorResistance(TERM.conductorPerMetre, area.value, material.word)
        : undefined;
    return { results: [reckon.lookedUp(TERM.conductorPerMetre, figure, area, material)], remarks: [] };
  },
  examples: [
    {
      name: "2.5 mm² copper",
      given: { area: "2.5 mm²", material: "copper" },
      values: { "conductor-per-metre": { value: 0.00741, within: 1e-12 } },
      source: "BS EN 60228: 7.41 mΩ/m",
    },
    {
      name: "16 mm² aluminium",
      given: { area: "16 mm²", material: "aluminium" },
      values: { "conductor-per-metre": { value: 0.00191, within: 1e-12 } },
      source: "BS EN 60228: 1.91 mΩ/m",
    },
  ],
});
