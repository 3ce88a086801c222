import { all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Cables and switchgear on a protected way out. */
export const escapeRouteEquipment = topic({
  id: "escape-route-equipment",
  title: "Cables or switchgear on a protected way out",
  group: "fire",
  items: ["fire.escape-routes"],
  facts: {
    route: ranked({
      asks: "What way out is it?",
      effort: "glance",
      values: {
        "one-of-several": "people have another way out",
        "sole-home": "it is the only way out of one home",
        "protected-common": "it is a protected way out that several homes or the public share",
      },
    }),
    what: ranked({
      asks: "What is there on the way out?",
      effort: "glance",
      values: {
        "needed-only": "only what the way out itself needs is there",
        enclosed: "other equipment is there, enclosed in a cupboard that holds fire back",
        open: "other equipment or bunched cables stand open on the way out",
      },
    }),
    "low-smoke": yesNo({
      asks: "Are the cables of a kind that spreads little flame and smoke?",
      effort: "opened",
      yes: "the cables spread little flame and smoke",
      no: "the cables are of ordinary kind",
      worse: "no",
    }),
    heat: yesNo({
      asks: "Is there any sign of heat or of a loose connection in it?",
      effort: "opened",
      yes: "there are signs of heat or of a loose connection",
      no: "there is no sign of heat or of a loose connection",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "fire-on-way-out",
      hazard: "burns-or-fire",
      route: "equipment on the way out burns and cuts people off",
      exists: is("what", "enclosed", "open"),
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "equipment and joints that stay cool",
          gone: is("heat", "yes"),
          sound: NEVER,
          regulations: ["526.1", "421.1.2"],
        },
        {
          id: "enclosure",
          provision: "surroundings",
          words: "an enclosure or another way out that leaves people time",
          gone: all(
            is("what", "open"),
            any(is("route", "protected-common"), all(is("route", "sole-home"), is("heat", "yes"))),
            no("low-smoke"),
          ),
          sound: NEVER,
          regulations: ["422.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(
        all(is("what", "open"), is("route", "protected-common")),
        all(is("what", "open"), no("low-smoke"), is("route", "sole-home")),
      ),
      words: "equipment other than what the way out needs stands open on it",
      regulations: ["422.2.1", "422.2.2"],
    },
  ],
  dangers: [
    {
      id: "heat",
      least: "C2",
      when: yes("heat"),
      words: "there are signs of heat or of a loose connection",
      regulations: ["421.1.1", "526.1"],
    },
  ],
  client: {
    C1: "Electrical parts on the way out are loose or have been hot. They could start a fire at any time. Have them made safe now.",
    C2: [
      says(
        "Electrical parts on the way out are loose or have been hot. They could start a fire. Have them put right soon.",
        yes("heat"),
      ),
      "Electrical parts on the way out could burn and trap people. Have them put right soon.",
    ],
    C3: "Electrical parts stand on the way out. They are sound. A closed cupboard would be better.",
    FI: unsure("We could not open all parts on the way out. They could be a fire risk. They must be looked at soon.", [
      "heat",
      "what",
      "low-smoke",
      "route",
    ]),
    none: "Nothing electrical on the way out puts people at risk.",
  },
  remedies: [
    { words: "Make loose joints good and replace parts that got hot.", changes: { heat: "no" } },
    { words: "Move the equipment off the way out.", changes: { what: "needed-only", heat: "no" } },
  ],
  examples: [
    {
      name: "bunched ordinary cables in a common stair",
      facts: { route: "protected-common", what: "open", "low-smoke": false, heat: false },
      possible: ["C2"],
      source: "422.2.1",
    },
    {
      name: "board in the hall of a house, sound",
      facts: { route: "sole-home", what: "open", "low-smoke": false, heat: false },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "cupboard not opened",
      facts: { route: "one-of-several", what: "enclosed", "low-smoke": true },
      possible: ["none", "C2"],
      missing: ["heat"],
      source: "union over what may be there",
    },
  ],
});
