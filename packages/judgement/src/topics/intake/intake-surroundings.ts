import { ALWAYS, all, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HOT_NOW, HOT_NOW_TOLD, heatAtIntake } from "./facts.ts";

/** Where meter, cut-out and main switch are: what is stored there, damp, and access. */
export const intakeSurroundings = topic({
  id: "intake-surroundings",
  title: "Surroundings of the intake",
  group: "intake",
  items: ["intake.meter", "intake.cut-out"],
  facts: {
    stored: ranked({
      asks: "What is kept around the intake equipment?",
      effort: "glance",
      values: {
        clear: "nothing that burns is kept at the equipment",
        near: "things that burn are kept in the same cupboard, clear of the equipment",
        against: "things that burn lie against the equipment or its cables",
      },
    }),
    damp: ranked({
      asks: "How dry is it?",
      effort: "glance",
      values: {
        dry: "it is dry",
        damp: "there is damp or condensation, and none in the equipment",
        wet: "water runs or drips on the equipment, or has been in it",
      },
    }),
    heat: heatAtIntake({
      asks: "Does any of the equipment show signs of heat?",
      effort: "glance",
      none: "equipment shows no sign of heat",
      marks: "equipment shows signs of heat",
    }),
    "switch-reached": yesNo({
      asks: "Can those who live or work here get to the main switch at once?",
      effort: "glance",
      yes: "the main switch can be got to at once",
      no: "the main switch is locked away, blocked or out of reach",
      worse: "no",
    }),
  },
  contested: {
    storage: {
      question: "Are things that burn, lying against sound intake equipment, potentially dangerous?",
      positions: {
        improvement: {
          words: "it is an improvement to move them",
          because: "the equipment is enclosed and shows no heat, and two things have to go wrong",
        },
        danger: {
          words: "they are potentially dangerous",
          because: "one loose terminal behind them starts a fire, often on the only way out",
        },
      },
    },
  },
  paths: [
    {
      id: "fire",
      hazard: "burns-or-fire",
      route: "a terminal overheats and sets fire to what is around it",
      exists: ALWAYS,
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "terminals that stay cool",
          gone: is("heat", "marks", "now"),
          sound: NEVER,
          regulations: ["421.1.1"],
        },
        {
          id: "around",
          provision: "surroundings",
          words: "enclosures, and surroundings that do not catch fire",
          gone: all(is("stored", "against"), held("storage", "danger")),
          sound: NEVER,
          regulations: ["421.1.1", "421.1.2"],
        },
      ],
    },
    {
      id: "water",
      hazard: "contact-with-live-parts",
      route: "water bridges live parts, and wet cases or walls become live or burn",
      exists: ALWAYS,
      layers: [
        {
          id: "keeps-water-out",
          provision: "barrier-or-enclosure",
          words: "enclosures that keep water away from live parts",
          gone: is("damp", "wet"),
          sound: NEVER,
          regulations: ["512.2.1", "522.3.1"],
        },
        oneEventAway("insulation", "insulation", "insulation that stands the water for a while", ["416.1"]),
      ],
    },
  ],
  departures: [
    {
      when: is("stored", "near", "against"),
      words: "things that burn are kept at the intake equipment",
      regulations: ["131.3.1", "421.1.1"],
    },
    {
      when: is("damp", "damp", "wet"),
      words: "the equipment is not of a kind for a damp place",
      regulations: ["512.2.1"],
    },
    {
      when: no("switch-reached"),
      words: "the means of switching off is not readily accessible",
      regulations: ["132.9", "513.1"],
    },
  ],
  dangers: [HOT_NOW],
  client: {
    C1: [
      HOT_NOW_TOLD,
      says(
        "Things that burn lie against main parts that have been hot. Turn the power off now. If there is smoke, get out and call for help.",
        all(is("stored", "against"), is("heat", "marks")),
      ),
    ],
    C2: [
      says("Water gets on the main power parts. They could give a shock or burn. Act soon.", is("damp", "wet")),
      says("There are signs of heat where the power comes in. It could start a fire. Act soon.", is("heat", "marks")),
      says(
        "Things that burn lie against the main power parts. They could catch fire. Take them away soon.",
        is("stored", "against"),
      ),
    ],
    C3: "Keep the place where the power comes in clear and dry. You must be able to get to the main switch fast.",
    FI: unsure("We could not see all of the place where the power comes in. This must be looked at.", [
      "stored",
      "damp",
      "heat",
    ]),
    none: "The place where the power comes in is clear and dry.",
  },
  remedies: [
    { words: "Clear the cupboard and keep it clear.", changes: { stored: "clear" } },
    { words: "Give those who live or work here a way to the main switch.", changes: { "switch-reached": "yes" } },
    {
      words: "Stop the water, and have wet equipment replaced, by the distributor where it is its own.",
      changes: { damp: "dry" },
    },
    { words: "Have the hot terminal or equipment made good before anything else.", changes: { heat: "none" } },
  ],
  examples: [
    {
      name: "coats and paint tins against the meter, no heat",
      facts: { stored: "against", damp: "dry", heat: "none", "switch-reached": true },
      possible: ["C3"],
      source: "trade practice: storage around sound equipment",
    },
    {
      name: "the same where storage is held to be dangerous",
      facts: { stored: "against", damp: "dry", heat: "none", "switch-reached": true },
      positions: { storage: "danger" },
      possible: ["C2"],
      source: "trade discussion of cupboards on the way out",
    },
    {
      name: "roof leak over the cut-out",
      facts: { stored: "clear", damp: "wet", heat: "none", "switch-reached": true },
      possible: ["C2"],
      source: "regulation 512.2.1",
    },
    {
      name: "main switch in the shop's locked store, flat above",
      facts: { stored: "clear", damp: "dry", heat: "none", "switch-reached": false },
      possible: ["C3"],
      source: "regulation 513.1",
    },
    {
      name: "clear and dry",
      facts: { stored: "clear", damp: "dry", heat: "none", "switch-reached": true },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "cupboard full, equipment not seen",
      facts: { stored: "near", "switch-reached": true },
      possible: ["C3", "C2", "C1"],
      missing: ["heat", "damp"],
      source: "union over what is behind",
    },
  ],
});
