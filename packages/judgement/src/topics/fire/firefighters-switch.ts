import { all, any, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A discharge sign or light above low voltage, and the switch with which firefighters make it dead. */
export const firefightersSwitch = topic({
  id: "firefighters-switch",
  title: "Firefighter's switch of a high-voltage (neon) sign",
  group: "fire",
  items: ["accessories.emergency"],
  facts: {
    "high-voltage": yesNo({
      asks: "Does the sign or light work above 1000 V a.c., outside or as a fixed one inside? (LED signs and portable ones up to 100 W do not count.)",
      effort: "glance",
      yes: "a fixed sign or light works above 1000 V a.c.",
      no: "no fixed sign or light works above 1000 V a.c.",
      worse: "yes",
    }),
    switch: ranked({
      asks: "What is its firefighter's switch like?",
      effort: "glance",
      values: {
        right: "the switch is in plain view, marked, red, within reach of the fire service, and off when up",
        poor: "the switch works, and is unmarked, too high, hidden or the wrong way up",
        none: "there is no firefighter's switch, or it does not cut the sign off",
      },
    }),
    "other-way": yesNo({
      asks: "Does something else in plain view from the entrance cut the sign off at once?",
      effort: "glance",
      yes: "a marked switch by the entrance cuts the sign off at once",
      no: "nothing else that firefighters would find cuts the sign off",
      worse: "no",
    }),
  },
  contested: {
    "fire-first": {
      question: "Is a missing firefighter's switch potentially dangerous, though it takes a fire first?",
      positions: {
        improvement: {
          words: "it takes a fire first, and then the fire service has the supply cut off",
          because: "two events lie between today and any harm",
        },
        danger: {
          words: "it is potentially dangerous",
          because: "the switch is there for the one event of a fire, and water goes on at once",
        },
      },
    },
  },
  paths: [
    {
      id: "water-on-live",
      hazard: "contact-with-live-parts",
      route: "firefighters put water on, or climb past, a sign with thousands of volts on it",
      exists: yes("high-voltage"),
      layers: [
        oneEventAway("no-fire", "surroundings", "no fire, and insulation of the sign that is whole"),
        {
          id: "switch",
          provision: "isolation",
          words: "a switch for firefighters, or another way that they find at once",
          gone: all(is("switch", "none"), no("other-way")),
          sound: is("switch", "right"),
          regulations: ["537.4"],
        },
        {
          id: "supply-cut",
          provision: "isolation",
          words: "the fire service having the supply of the building cut off",
          gone: held("fire-first", "danger"),
          sound: NEVER,
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("high-voltage"), any(is("switch", "poor"), is("switch", "none"))),
      words: "there is no firefighter's switch as such a sign asks for",
      regulations: ["537.4"],
    },
  ],
  client: {
    C2: "In a fire, the fire service cannot turn your sign off. It could give them a deadly shock. A switch must be fitted soon.",
    C3: "The switch for firefighters at your sign is missing or hard to find. A good one should be fitted.",
    FI: unsure("We could not find how firefighters turn your sign off. This must be looked at soon.", [
      "switch",
      "other-way",
      "high-voltage",
    ]),
    none: "Firefighters can turn the sign off, or no such switch is needed.",
  },
  remedies: [
    {
      words: "Mark the switch that is there, clear the way to it, and set it off when up.",
      changes: { switch: "right" },
    },
    { words: "Fit a firefighter's switch where the fire service asks for it.", changes: { switch: "right" } },
    { words: "Replace the sign by one that works at low voltage.", changes: { "high-voltage": "no" } },
  ],
  examples: [
    {
      name: "neon sign of 6 kV over a shop, no switch",
      facts: { "high-voltage": true, switch: "none", "other-way": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 537.4, recalled",
    },
    {
      name: "the same held to be potentially dangerous",
      facts: { "high-voltage": true, switch: "none", "other-way": false },
      positions: { "fire-first": "danger" },
      possible: ["C2"],
      source: "trade discussion of switches for firefighters",
    },
    {
      name: "switch behind the awning",
      facts: { "high-voltage": true, switch: "poor" },
      possible: ["C3"],
      source: "trade practice: there, and poorly placed",
    },
    {
      name: "LED sign",
      facts: { "high-voltage": false },
      possible: ["none"],
      classification: "none",
      source: "regulation 537.4: asked for above low voltage only",
    },
    {
      name: "switch not looked for",
      facts: { "high-voltage": true },
      possible: ["none", "C3"],
      missing: ["switch"],
      source: "union over the switch",
    },
  ],
});
