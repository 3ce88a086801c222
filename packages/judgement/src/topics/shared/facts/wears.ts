import { ranked } from "@good-grounds/core";

/** What acts on the protection in use. */
export const WEAR_FACTS = Object.freeze({
  wears: ranked({
    asks: "What acts on it in use?",
    effort: "glance",
    values: {
      nothing: "nothing knocks, rubs, heats or weathers it",
      knocks: "people, vehicles or doors knock or rub it from outside",
      moved: "things are stored or moved right beside it, inside whatever is around it",
      "heat-weather-rodents": "heat, weather, water or gnawing animals act on it",
    },
  }),
});
