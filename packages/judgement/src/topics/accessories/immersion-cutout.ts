import { ALWAYS, all, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** An immersion heater that has no second, separate device against boiling. */
export const immersionCutout = topic({
  id: "immersion-cutout",
  title: "Immersion heater without a thermal cut-out",
  group: "accessories",
  items: ["accessories.fixed-equipment"],
  facts: {
    "cut-out": yesNo({
      asks: "Is there a thermal cut-out, apart from the thermostat, that stays off until it is reset?",
      effort: "opened",
      yes: "a separate cut-out stays off once it has acted",
      no: "there is a thermostat and no separate cut-out",
      worse: "no",
    }),
    cistern: ranked({
      asks: "What is the feed cistern above made of, and does it stand on a full board?",
      effort: "glance",
      values: {
        metal: "the cistern is of metal or of plastic made for boiling water, fully held up",
        plastic: "the cistern is of plain plastic, or not fully held up",
      },
    }),
    "thermostat-fails": yesNo({
      asks: "Has the water boiled, steam come from the vent, or the thermostat stuck?",
      effort: "glance",
      yes: "the thermostat has stuck or the water has boiled",
      no: "nothing shows that the thermostat fails",
      worse: "yes",
    }),
  },
  contested: {
    "standard-of-its-day": {
      question: "Is a single thermostat over a cistern that withstands boiling worth recording?",
      positions: {
        record: {
          words: "it is worth recording as an improvement",
          because: "the thermostat is the one thing that stops boiling, and a cut-out costs little",
        },
        "leave-it": {
          words: "it is not recorded",
          because: "the heater was to the standard of its day and the cistern withstands the failure",
        },
      },
    },
  },
  paths: [
    {
      id: "boils-over",
      hazard: "burns-or-fire",
      route: "the water boils, the cistern above softens and fails, and boiling water falls on people",
      exists: ALWAYS,
      layers: [
        {
          id: "thermostat",
          provision: "thermal-protection",
          words: "the thermostat",
          gone: yes("thermostat-fails"),
          sound: NEVER,
          regulations: ["554.2.1"],
        },
        {
          id: "cut-out",
          provision: "thermal-protection",
          words: "the thermal cut-out",
          gone: no("cut-out"),
          sound: NEVER,
          regulations: ["554.2.1"],
        },
        {
          id: "cistern",
          provision: "surroundings",
          words: "a cistern that withstands boiling water",
          gone: is("cistern", "plastic"),
          sound: NEVER,
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("cut-out"), held("standard-of-its-day", "record")),
      words: "one thermostat is all that keeps the water from boiling",
      regulations: ["134.1.1", "554.2.1"],
    },
    {
      when: yes("thermostat-fails"),
      words: "the thermostat does not work",
      regulations: ["134.1.1", "554.2.1"],
    },
  ],
  client: {
    C1: "Your water heater can boil, and the tank above could fail. Hot water could fall on you. Turn the heater off now.",
    C2: [
      says(
        "The thermostat of your water heater does not work, and it has no safety cut-out. The water can boil. Turn it off and have it put right.",
        all(yes("thermostat-fails"), no("cut-out")),
      ),
      says(
        "If one part fails, your water heater can boil over. The tank above may not hold. It needs a safety cut-out soon.",
        all(no("cut-out"), is("cistern", "plastic")),
      ),
      says(
        "The thermostat of your water heater does not work. Only one safety part is left. Have it put right soon.",
        yes("thermostat-fails"),
      ),
    ],
    C3: [
      says(
        "Your water heater lacks a second safety cut-out. The tank can stand the heat. A new heater part is advised.",
        no("cut-out"),
      ),
      says(
        "The thermostat of your water heater does not work. Other parts keep you safe for now. Have it changed.",
        yes("thermostat-fails"),
      ),
    ],
    FI: [
      unsure("We could not see if your water heater has a safety cut-out. This must be looked at soon.", ["cut-out"]),
      unsure("We could not find out how safe your water heater is. This must be looked at soon.", [
        "cistern",
        "thermostat-fails",
      ]),
    ],
    none: "Your water heater is safe enough.",
  },
  remedies: [
    {
      words: "Fit a thermostat with a built-in cut-out that has to be reset by hand.",
      changes: { "cut-out": "yes", "thermostat-fails": "no" },
    },
  ],
  examples: [
    {
      name: "no cut-out, metal cistern",
      facts: { "cut-out": false, cistern: "metal", "thermostat-fails": false },
      possible: ["C3"],
      source: "trade practice: less likely to do harm",
    },
    {
      name: "the same, taken as the standard of its day",
      facts: { "cut-out": false, cistern: "metal", "thermostat-fails": false },
      positions: { "standard-of-its-day": "leave-it" },
      possible: ["none"],
      source: "trade practice: standard of its day",
    },
    {
      name: "no cut-out, plastic cistern",
      facts: { "cut-out": false, cistern: "plastic", "thermostat-fails": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice after people were scalded under a failed cistern",
    },
    {
      name: "no cut-out, plastic cistern, thermostat stuck",
      facts: { "cut-out": false, cistern: "plastic", "thermostat-fails": true },
      possible: ["C1"],
      source: "trade practice: nothing stops the boiling",
    },
    {
      name: "cover not opened",
      facts: { cistern: "plastic", "thermostat-fails": false },
      possible: ["none", "C2"],
      missing: ["cut-out"],
      source: "union over what opening would show",
    },
  ],
});
