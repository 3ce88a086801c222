import { all, any, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Electric heating in floors, walls and ceilings. */
export const floorHeating = topic({
  id: "floor-heating",
  title: "Electric floor or ceiling heating",
  group: "special",
  items: ["special.locations", "accessories.fixed-equipment"],
  facts: {
    "rcd-30ma": yesNo({
      asks: "Is the heating circuit behind a 30 mA RCD that works?",
      effort: "glance",
      yes: "the heating is behind a working 30 mA RCD",
      no: "the heating has no working 30 mA RCD",
      worse: "no",
    }),
    "screen-earthed": yesNo({
      asks: "Is the heating's screen or a grid above it connected to the protective conductor, or is it a class II unit?",
      effort: "opened",
      yes: "the screen or grid is earthed, or the unit is class II",
      no: "no earthed screen or grid lies over a class I or unscreened unit",
      worse: "no",
    }),
    "heat-limited": yesNo({
      asks: "Does a floor sensor or limiter keep the floor from getting too hot?",
      effort: "glance",
      yes: "a sensor or limiter keeps the floor temperature down",
      no: "nothing limits the floor temperature",
      worse: "no",
    }),
    insulation: ranked({
      asks: "What does the insulation test of the heating unit give?",
      effort: "measured",
      values: {
        met: "insulation resistance of the unit is within its limit",
        low: "insulation resistance of the unit is below its limit",
      },
      worked: { by: "insulation-resistance", met: "met", notMet: "low", findings: "none" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "pierced",
      hazard: "contact-with-live-parts",
      route: "something driven into the floor, or a failed unit, brings the floor to a dangerous voltage",
      exists: any(no("rcd-30ma"), no("screen-earthed"), is("insulation", "low")),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the heating unit",
          gone: is("insulation", "low"),
          sound: NEVER,
          regulations: ["753.411.3.2", "416.1"],
        },
        {
          id: "rcd-and-screen",
          provision: "additional-protection",
          words: "an RCD that a pierced screen makes trip",
          gone: any(no("rcd-30ma"), no("screen-earthed")),
          sound: NEVER,
          regulations: ["753.415.1", "753.411.3.2"],
        },
        {
          id: "covering",
          provision: "barrier-or-enclosure",
          words: "the floor over it",
          gone: all(is("insulation", "low"), no("screen-earthed")),
          sound: NEVER,
        },
      ],
    },
    {
      id: "too-hot",
      hazard: "burns-or-fire",
      route: "the floor gets hot enough to burn skin or covering",
      exists: no("heat-limited"),
      layers: [
        oneEventAway("covering", "surroundings", "nothing being laid over it that holds the heat"),
        oneEventAway("power", "thermal-protection", "the low power of the heating", ["753.424.1.1"]),
      ],
    },
  ],
  departures: [
    {
      when: any(no("rcd-30ma"), no("screen-earthed"), no("heat-limited"), is("insulation", "low")),
      words: "the heating is not protected as its section asks",
      regulations: ["753.415.1", "753.424.1.1", "753.411.3.2"],
    },
  ],
  client: {
    C1: "The floor heating has failed and its floor could be live. Keep it off.",
    C2: "The floor heating has failed inside or lacks its safety parts. Keep it off until it has been put right.",
    C3: [
      says("The floor heating is safe now, but it lacks a safety part asked for today.", is("insulation", "met")),
      says(
        "The floor heating has a fault inside. Its safety parts guard you for now. Have it put right.",
        is("insulation", "low"),
      ),
    ],
    FI: unsure("We could not find out if the floor heating is safe. Keep it off until this is known.", [
      "rcd-30ma",
      "screen-earthed",
      "heat-limited",
      "insulation",
    ]),
    none: "The floor heating is as it should be.",
  },
  remedies: [
    { words: "Protect the circuit by a 30 mA RCD.", changes: { "rcd-30ma": "yes" } },
    { words: "Fit a floor sensor or limiter.", changes: { "heat-limited": "yes" } },
    {
      words: "Disconnect a failed unit for good, or replace it.",
      changes: { insulation: "met", "screen-earthed": "yes" },
    },
  ],
  examples: [
    {
      name: "no RCD, screen earthed, insulation sound",
      facts: { "rcd-30ma": false, "screen-earthed": true, "heat-limited": true, insulation: "met" },
      possible: ["C3"],
      source: "753.415.1: protection of the unit holds in two layers",
    },
    {
      name: "insulation low, no RCD",
      facts: { "rcd-30ma": false, "screen-earthed": true, "heat-limited": true, insulation: "low" },
      possible: ["C2"],
      source: "arithmetic of layers: the floor alone is left",
    },
    {
      name: "insulation not tested",
      facts: { "rcd-30ma": false, "screen-earthed": true, "heat-limited": true },
      possible: ["C3", "C2"],
      missing: ["insulation"],
      source: "union over what a test would show",
    },
  ],
});
