import { all, any, is, NEVER, no, oneKind, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A vehicle charging point earthed from a PME supply: what happens to the car's body when the supply's PEN breaks. */
export const evOpenPen = topic({
  id: "ev-open-pen",
  title: "Vehicle charging: protection against a broken PEN",
  group: "sources",
  items: ["sources.vehicle-charging"],
  facts: {
    earthing: oneKind({
      asks: "What is the charging point earthed by?",
      effort: "opened",
      values: {
        "tn-c-s": "the charging point is earthed by the supply's PEN (TN-C-S)",
        "tn-s": "the charging point is earthed by a separate supply conductor (TN-S)",
        tt: "the charging point has an electrode of its own (TT)",
      },
    }),
    "tn-s-proved": yesNo({
      asks: "Where it is said to be TN-S: is it known that the street main has not been changed to PME?",
      effort: "beyond",
      yes: "the distributor confirms a separate earth all the way",
      no: "the street main may have become PME",
      worse: "no",
    }),
    outdoors: yesNo({
      asks: "Can a vehicle be charged outdoors from it?",
      effort: "glance",
      yes: "a vehicle can be charged outdoors",
      no: "vehicles are charged only inside a building",
      worse: "yes",
    }),
    measure: ranked({
      asks: "What measure is there against a broken PEN: device in the point, device upstream, electrode keeping the voltage low, isolating transformer?",
      effort: "opened",
      values: {
        documented: "a measure against a broken PEN is there and documented",
        undocumented: "a measure is said to be there, without papers or marking",
        none: "there is no measure against a broken PEN",
      },
    }),
    "electrode-met": yesNo({
      asks: "Where it has its own electrode: do its resistance and RCD clear a fault?",
      effort: "measured",
      yes: "electrode and RCD clear an earth fault",
      no: "electrode and RCD do not clear an earth fault",
      worse: "no",
      worked: { by: "electrode", met: "yes", notMet: "no", findings: "none" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "body-live",
      hazard: "shock-under-fault",
      route: "the PEN of the supply breaks and the body of the car takes a dangerous voltage to the ground under it",
      exists: all(yes("outdoors"), any(is("earthing", "tn-c-s"), all(is("earthing", "tn-s"), no("tn-s-proved")))),
      layers: [
        {
          id: "pen",
          provision: "fault-protection",
          words: "the supply's PEN, which the distributor keeps whole",
          gone: NEVER,
          sound: NEVER,
        },
        {
          id: "broken-pen-measure",
          provision: "fault-protection",
          words: "a measure that disconnects or limits the voltage when the PEN breaks",
          gone: is("measure", "none"),
          sound: NEVER,
          regulations: ["722.411.4.1"],
        },
      ],
    },
    {
      id: "tt-fault",
      hazard: "shock-under-fault",
      route: "an earth fault at the charging point is not cleared",
      exists: is("earthing", "tt"),
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "the insulation of the charging point and lead",
          gone: NEVER,
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "electrode and RCD that clear a fault",
          gone: no("electrode-met"),
          sound: NEVER,
          regulations: ["411.5.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(
        yes("outdoors"),
        is("measure", "undocumented", "none"),
        any(is("earthing", "tn-c-s"), all(is("earthing", "tn-s"), no("tn-s-proved"))),
      ),
      words: "no documented measure against a broken PEN",
      regulations: ["722.411.4.1"],
    },
  ],
  client: {
    C2: [
      says(
        "If a cable in the street breaks, the car could give a shock while it charges. Have this put right soon.",
        is("earthing", "tn-c-s", "tn-s"),
      ),
      says(
        "The earth rod of the car charger does not do its job. In a fault, the car could give a shock. Have this put right soon.",
        is("earthing", "tt"),
      ),
    ],
    C3: "The car charger says it is safe if a cable in the street breaks, but no papers show it. Ask for them.",
    FI: [
      unsure(
        "We could not find out if the earth rod of the car charger does its job. This must be looked at.",
        ["electrode-met"],
        is("earthing", "tt"),
      ),
      unsure(
        "We could not find out if the car charger is safe when a cable in the street breaks. This must be looked at.",
        ["measure", "tn-s-proved", "earthing", "outdoors"],
      ),
    ],
    none: "The car charger is earthed in a safe way.",
  },
  remedies: [
    { words: "Get the maker's document for the measure and file it.", changes: { measure: "documented" } },
    { words: "Fit a device that disconnects when the PEN breaks, earth included.", changes: { measure: "documented" } },
    {
      words: "Give the point an electrode of its own with an RCD, apart from the supply's earth.",
      changes: { earthing: "tt", "electrode-met": "yes" },
    },
  ],
  examples: [
    {
      name: "outdoors on PME, nothing against a broken PEN",
      facts: { earthing: "tn-c-s", outdoors: true, measure: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; 722.411.4.1",
    },
    {
      name: "own electrode 90 Ω with 30 mA RCD",
      facts: { earthing: "tt", outdoors: true, "electrode-met": true },
      possible: ["none"],
      classification: "none",
      source: "trade practice; 722.411.4.1",
    },
    {
      name: "TN-S, street main not known, nothing fitted",
      facts: {
        earthing: "tn-s",
        outdoors: true,
        measure: "none",
        "tn-s-proved": { notKnown: "limited", reason: "distributor has not answered" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade practice: TN-S may have become PME",
    },
    {
      name: "measure not looked for",
      facts: { earthing: "tn-c-s", outdoors: true },
      possible: ["none", "C3", "C2"],
      missing: ["measure"],
      source: "union over what may be there",
    },
  ],
});
