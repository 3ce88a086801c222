import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HOT_NOW, HOT_NOW_TOLD, heatAtIntake } from "./facts.ts";

/** Tails, main fuse and demand do not go together. */
export const meterTailsSize = topic({
  id: "meter-tails-size",
  title: "Meter tails too small for the main fuse or the load",
  group: "intake",
  items: ["intake.meter-tails", "intake.cut-out"],
  facts: {
    "fuse-within": yesNo({
      asks: "Is the main fuse no larger than what the tails carry as they are run?",
      effort: "glance",
      yes: "the main fuse is no larger than what the tails carry",
      no: "the main fuse is larger than what the tails carry",
      worse: "no",
    }),
    load: ranked({
      asks: "How does the load compare with what the tails carry?",
      effort: "measured",
      values: {
        limited: "devices after the tails keep the load within what they carry",
        below: "the assessed demand is below what the tails carry, and no device keeps it there",
        above: "the assessed or measured demand is above what the tails carry",
      },
    }),
    "demand-within-fuse": yesNo({
      asks: "Is the maximum demand within the main fuse?",
      effort: "measured",
      yes: "the maximum demand is within the main fuse",
      no: "the maximum demand is more than the main fuse",
      worse: "no",
      worked: { by: "maximum-demand", matter: "demand-within-fuse", met: "yes", notMet: "no" },
    }),
    heat: heatAtIntake({
      asks: "Are tails, terminals or the main switch scorched, discoloured or hot to the back of the hand?",
      effort: "glance",
      none: "tails and their terminals show no sign of heat",
      marks: "tails or their terminals show signs of heat",
    }),
  },
  contested: {
    "assessed-demand": {
      question: "Does an assessed demand below the capacity of the tails stand in for a smaller main fuse?",
      positions: {
        counts: {
          words: "a demand well below counts as long as nothing has been hot",
          because: "the same demand is the ground on which supplies and main switches are chosen",
        },
        "does-not-count": {
          words: "it does not: the next shower or vehicle charger lifts the load",
          because: "433.1.1 wants a device that keeps the load within what the conductor carries",
        },
      },
    },
  },
  paths: [
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "the load rises above what the tails carry, they overheat, and their insulation fails",
      exists: ALWAYS,
      layers: [
        {
          id: "fuse",
          provision: "overcurrent-protection",
          words: "a main fuse within what the tails carry",
          gone: no("fuse-within"),
          sound: NEVER,
          regulations: ["433.1.1"],
        },
        {
          id: "load",
          provision: "thermal-protection",
          words: "a load within what the tails carry",
          gone: any(is("load", "above"), all(is("load", "below"), held("assessed-demand", "does-not-count"))),
          sound: is("load", "limited"),
          regulations: ["311.1", "433.3.1"],
        },
        oneEventAway("surroundings", "surroundings", "enclosures and surroundings that do not burn", ["421.1.1"]),
      ],
    },
    {
      id: "joint",
      hazard: "burns-or-fire",
      route: "a hot terminal goes on heating until something burns",
      exists: ALWAYS,
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "terminals and tails that stay cool",
          gone: is("heat", "marks", "now"),
          sound: NEVER,
          regulations: ["526.1"],
        },
        oneEventAway("around", "surroundings", "enclosures and surroundings that do not burn", ["421.1.1"]),
      ],
    },
  ],
  departures: [
    {
      when: all(no("fuse-within"), is("load", "below", "above")),
      words: "nothing keeps the load within what the tails carry",
      regulations: ["433.1.1"],
    },
    {
      when: no("demand-within-fuse"),
      words: "the maximum demand is more than the main fuse",
      regulations: ["311.1"],
    },
  ],
  dangers: [HOT_NOW],
  client: {
    C1: HOT_NOW_TOLD,
    C2: [
      says(
        "The main wires are too thin for the power used here. They could get hot and burn. Have them changed soon.",
        all(no("fuse-within"), is("load", "above")),
      ),
      says(
        "The main wires or their ends have been hot. They could burn. Have this put right soon.",
        is("heat", "marks"),
      ),
      says(
        "The main fuse is too big for the main wires. If more power is used, they could get hot and burn. Have this put right soon.",
        no("fuse-within"),
      ),
    ],
    C3: [
      says(
        "You may use more power than the main fuse is made for. It is not a danger now. Check before you add a shower or car charger.",
        no("demand-within-fuse"),
      ),
      says(
        "The main wires are small for the main fuse. It is not a danger now. Check before you add a shower or car charger.",
        no("fuse-within"),
      ),
    ],
    FI: [
      unsure("We could not find out if the main wires are thick enough. This must be looked at.", [
        "fuse-within",
        "load",
      ]),
      unsure("We could not find out if the main wires have been hot. This must be looked at.", ["heat"]),
    ],
    none: "The main wires are thick enough.",
  },
  remedies: [
    {
      words: "Ask the distributor for a smaller main fuse, where the demand allows it.",
      changes: { "fuse-within": "yes" },
    },
    {
      words: "Put a device after the tails that keeps the load within what they carry.",
      changes: { load: "limited" },
    },
    {
      words: "Replace the tails by larger ones, with new terminals where heat has been; the supplier isolates.",
      changes: { "fuse-within": "yes", load: "limited", heat: "none" },
    },
    {
      words: "Ask the distributor for a larger supply, or limit the load of the largest equipment.",
      changes: { "demand-within-fuse": "yes" },
    },
  ],
  examples: [
    {
      name: "tail smokes at its terminal, size and load in order",
      facts: { "fuse-within": true, load: "limited", "demand-within-fuse": true, heat: "now" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: burning on the distributor's fuse",
    },
    {
      name: "16 mm² tails on 100 A, demand 54 A, no heat",
      facts: { "fuse-within": false, load: "below", "demand-within-fuse": true, heat: "none" },
      possible: ["C3"],
      source: "trade discussion of 16 mm² tails",
    },
    {
      name: "the same where an assessed demand is held not to count",
      facts: { "fuse-within": false, load: "below", "demand-within-fuse": true, heat: "none" },
      positions: { "assessed-demand": "does-not-count" },
      possible: ["C2"],
      source: "trade discussion of 16 mm² tails",
    },
    {
      name: "16 mm² tails on 100 A, 95 A measured",
      facts: { "fuse-within": false, load: "above", "demand-within-fuse": true, heat: "none" },
      possible: ["C2"],
      source: "regulation 433.1.1",
    },
    {
      name: "25 mm² on 100 A, brown terminal",
      facts: { "fuse-within": true, load: "limited", "demand-within-fuse": true, heat: "marks" },
      possible: ["C2"],
      source: "trade practice: signs of heat",
    },
    {
      name: "demand 112 A on a 100 A fuse",
      facts: { "fuse-within": true, load: "below", "demand-within-fuse": false, heat: "none" },
      possible: ["C3"],
      source: "regulation 311.1",
    },
    {
      name: "fuse too large, load not assessed",
      facts: { "fuse-within": false, heat: "none", "demand-within-fuse": true },
      possible: ["none", "C3", "C2"],
      missing: ["load"],
      source: "union over the load",
    },
  ],
});
