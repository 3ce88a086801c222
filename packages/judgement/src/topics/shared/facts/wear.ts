import { ranked, yesNo } from "@good-grounds/core";

/** What acts on the protection in use, and what makes contact worse. */
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
  "wet-or-conductive": yesNo({
    asks: "Is the place wet, or do people stand in it among earthed metal or on a conducting floor?",
    effort: "glance",
    yes: "the place is wet, or closed in by conducting surfaces",
    no: "the place is dry, and its surfaces do not conduct",
    worse: "yes",
  }),
});
