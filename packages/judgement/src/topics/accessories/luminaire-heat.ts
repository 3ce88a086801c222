import { all, any, is, NEVER, ranked, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A luminaire with too large a lamp, or too near to something that can burn. */
export const luminaireHeat = topic({
  id: "luminaire-heat",
  title: "Light too hot: lamp too strong, or too near to what can burn",
  group: "accessories",
  items: ["accessories.luminaires", "fire.hot-surfaces"],
  facts: {
    lamp: ranked({
      asks: "Is the lamp within the wattage and kind marked on the luminaire?",
      effort: "glance",
      values: {
        within: "the lamp is within what the luminaire is marked for",
        over: "the lamp is above what the luminaire is marked for",
      },
    }),
    "near-fuel": ranked({
      asks: "How near is something that can burn: clothes, curtains, stored goods, a shade, thatch?",
      effort: "glance",
      values: {
        clear: "nothing that can burn is near the lamp",
        "too-near": "something that can burn is nearer than the luminaire is marked for",
        touching: "something that can burn touches the lamp or can fall on it",
      },
    }),
    damage: ranked({
      asks: "What has the heat done to holder, flex, shade or surroundings?",
      effort: "glance",
      values: {
        none: "heat has done no damage",
        browned: "holder, shade or surroundings are browned",
        brittle: "the holder or the insulation of its cores is brittle or burnt",
        "burnt-open": "a finger gets at live metal where heat did damage",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "sets-alight",
      hazard: "burns-or-fire",
      route: "the lamp heats something near it until it burns",
      exists: any(
        is("damage", "browned", "brittle", "burnt-open"),
        is("near-fuel", "touching"),
        all(is("lamp", "over"), is("near-fuel", "too-near")),
      ),
      layers: [
        oneEventAway("not-yet", "surroundings", "surroundings that have not caught yet", ["421.1.2", "559.4.1"]),
      ],
    },
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "brittle insulation or a burnt holder falls away and somebody touches live metal",
      exists: is("damage", "brittle", "burnt-open"),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "what heat has left of insulation and holder",
          gone: is("damage", "burnt-open"),
          sound: NEVER,
          regulations: ["416.1", "416.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(
        is("lamp", "over"),
        is("near-fuel", "too-near", "touching"),
        is("damage", "browned", "brittle", "burnt-open"),
      ),
      words: "the lamp or its place is not what the luminaire is made for",
      regulations: ["559.4.1", "421.1.2"],
    },
  ],
  client: {
    C1: "Heat has burnt a light. A finger can touch live metal. Keep the light off and have it made safe now.",
    C2: "A light gets too hot for its lamp or place. It could start a fire. Leave it off until it is put right.",
    C3: "A light has the wrong lamp, or is close to things that burn. Fit a cooler lamp or clear a space.",
    FI: unsure("A light may be too hot. We could not see what the heat has done. This must be looked at soon.", [
      "damage",
      "near-fuel",
      "lamp",
    ]),
    none: "The light suits its lamp and its place.",
  },
  remedies: [
    {
      words: "Fit a cool lamp within the marking and clear what can burn, if nothing is damaged yet.",
      changes: { lamp: "within", "near-fuel": "clear" },
    },
    {
      words: "Replace the luminaire and cut its cores back to sound insulation.",
      changes: { lamp: "within", "near-fuel": "clear", damage: "none" },
    },
  ],
  examples: [
    {
      name: "lamp above the marking, no damage",
      facts: { lamp: "over", "near-fuel": "clear", damage: "none" },
      possible: ["C3"],
      source: "trade practice: a departure without sign of heat",
    },
    {
      name: "lamp above the marking, holder browned",
      facts: { lamp: "over", "near-fuel": "clear", damage: "browned" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: heat does damage",
    },
    {
      name: "clothes against a wardrobe lamp",
      facts: { lamp: "within", "near-fuel": "touching", damage: "none" },
      possible: ["C2"],
      source: "trade practice: fire is to be expected",
    },
    {
      name: "holder burnt open",
      facts: { damage: "burnt-open" },
      possible: ["C1"],
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "flood lamp nearer to a shelf than its marking, right lamp",
      facts: { lamp: "within", "near-fuel": "too-near", damage: "none" },
      possible: ["C3"],
      source: "trade practice: a departure without sign of heat",
    },
    {
      name: "only the lamp was looked at",
      facts: { lamp: "over", "near-fuel": "clear" },
      possible: ["C3", "C2", "C1"],
      missing: ["damage"],
      source: "union over what heat may have done",
    },
  ],
});
