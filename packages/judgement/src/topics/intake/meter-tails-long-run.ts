import { ALWAYS, all, any, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Tails that run far, or in a wall, on the main fuse alone. */
export const meterTailsLongRun = topic({
  id: "meter-tails-long-run",
  title: "Long or concealed run of meter tails",
  group: "intake",
  items: ["intake.meter-tails", "intake.isolator"],
  facts: {
    "over-limit": yesNo({
      asks: "Are the tails longer than the distributor allows on its fuse, often 2 m or 3 m?",
      effort: "glance",
      yes: "the tails are longer than the distributor allows on its fuse",
      no: "the tails are no longer than the distributor allows on its fuse",
      worse: "yes",
    }),
    "own-device": yesNo({
      asks: "Does the consumer's own fuse or breaker protect them at the meter?",
      effort: "glance",
      yes: "a fuse or breaker of the consumer protects them at the meter",
      no: "only the distributor's fuse protects them",
      worse: "no",
    }),
    route: ranked({
      asks: "How do they run?",
      effort: "opened",
      values: {
        guarded: "they run in view, in earthed metal or steel armour, or deeper than 50 mm",
        "safe-zone": "they run in a wall less than 50 mm deep, within the zones where cables are expected",
        anywhere: "they run in a wall or floor less than 50 mm deep, where nobody expects a cable",
      },
    }),
  },
  contested: {
    concealed: {
      question: "Are unarmoured tails in a wall, within the expected zones, potentially dangerous?",
      positions: {
        improvement: {
          words: "they are to be improved",
          because: "people are taught not to drill there, and the run can be told from the meter and the board",
        },
        danger: {
          words: "they are potentially dangerous",
          because: "a nail meets a conductor on a fuse of up to 100 A, with no RCD before it",
        },
      },
    },
  },
  paths: [
    {
      id: "pierced",
      hazard: "contact-with-live-parts",
      route: "a nail or drill pierces a tail, and whoever holds it gets a shock or burns",
      exists: ALWAYS,
      layers: [
        oneEventAway("sheath", "insulation", "the sheath and insulation of the tails", ["416.1"]),
        {
          id: "route",
          provision: "barrier-or-enclosure",
          words: "a run where nobody drills, or that keeps a nail away",
          gone: any(is("route", "anywhere"), all(is("route", "safe-zone"), held("concealed", "danger"))),
          sound: NEVER,
          regulations: ["522.6.201", "522.6.202"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("over-limit"), no("own-device")),
      words: "the tails are longer than what the distributor's fuse may protect",
      regulations: ["433.3.1", "434.3", "434.2.1"],
    },
    {
      when: is("route", "safe-zone", "anywhere"),
      words: "the concealed tails are neither guarded nor protected by an RCD of 30 mA",
      regulations: ["522.6.201", "522.6.202"],
    },
  ],
  client: {
    C2: "The main wires run hidden with no guard. A nail or drill could hit them and give a bad shock. Have them guarded soon.",
    C3: "The main wires run a long way or in a wall. They are not a danger now. A guard or a fuse at the meter is better.",
    FI: unsure("We could not find out where the main wires run. This must be traced.", ["route"]),
    none: "The main wires run in a safe way.",
  },
  remedies: [
    { words: "Fit a switch with fuse beside the meter.", changes: { "own-device": "yes" } },
    {
      words: "Run the tails in view, or replace them by steel-armoured cable or tails in earthed metal.",
      changes: { route: "guarded" },
    },
  ],
  examples: [
    {
      name: "8 m to the board through the loft, in view, no fuse at the meter",
      facts: { "over-limit": true, "own-device": false, route: "guarded" },
      possible: ["C3"],
      source: "regulation 434.2.1",
    },
    {
      name: "straight down the wall from meter to board, 20 mm deep",
      facts: { "over-limit": false, "own-device": false, route: "safe-zone" },
      possible: ["C3"],
      source: "regulation 522.6.202",
    },
    {
      name: "the same where it is held to be dangerous",
      facts: { "over-limit": false, "own-device": false, route: "safe-zone" },
      positions: { concealed: "danger" },
      possible: ["C2"],
      source: "trade discussion of concealed tails",
    },
    {
      name: "slantwise behind plasterboard",
      facts: { "over-limit": false, route: "anywhere" },
      possible: ["C2"],
      source: "regulation 522.6.201",
    },
    {
      name: "fuse at the meter, armoured cable",
      facts: { "over-limit": true, "own-device": true, route: "guarded" },
      possible: ["none"],
      source: "regulation 434.2.1",
    },
    {
      name: "run not traced",
      facts: {
        "over-limit": false,
        "own-device": false,
        route: { notKnown: "limited", reason: "the tails go into a wall and come out at the board" },
      },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over the run",
    },
    {
      name: "run not looked at",
      facts: { "over-limit": true },
      possible: ["none", "C3", "C2"],
      missing: ["own-device", "route"],
      source: "union over what is not known",
    },
  ],
});
