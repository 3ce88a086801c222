import { all, any, is, NEVER, no, not, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A fuse carrier with wire that is too heavy, or with something that is no fuse wire at all. */
export const fuseWireOversize = topic({
  id: "fuse-wire-oversize",
  title: "Wrong fuse wire or fuse link",
  group: "boards",
  items: ["boards.devices", "circuits.protection"],
  facts: {
    element: ranked({
      asks: "What is in the carrier?",
      effort: "opened",
      values: {
        right: "the fuse is of the rating of its carrier",
        smaller: "the fuse is of a smaller rating than its carrier",
        larger: "the fuse is of a larger rating than its carrier",
        "no-fuse": "something that is no fuse bridges the carrier: copper wire, a nail, foil, a link",
      },
    }),
    "cable-suits": yesNo({
      asks: "Does the cable carry enough for the fuse as it is now?",
      effort: "measured",
      yes: "the cable is large enough for the fuse as it is now",
      no: "the cable is too small for the fuse as it is now",
      worse: "no",
      worked: { by: "cable-capacity", matter: "device-within-cable", met: "yes", notMet: "no", findings: "none" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "the cable is overloaded for long and its insulation fails or burns",
      exists: any(is("element", "no-fuse"), no("cable-suits")),
      layers: [
        oneEventAway("load", "surroundings", "a load that stays within what the cable carries", ["433.1"]),
        {
          id: "fuse",
          provision: "overcurrent-protection",
          words: "a fuse that melts before the cable is hurt",
          gone: any(is("element", "no-fuse"), no("cable-suits")),
          sound: NEVER,
          regulations: ["433.1.1", "533.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("element", "right", "smaller")),
      words: "the fuse is not the one the carrier is made and marked for",
      regulations: ["533.1.1"],
    },
    {
      when: all(is("element", "right", "smaller"), no("cable-suits")),
      words: "the fuse does not suit the cable",
      regulations: ["433.1.1"],
    },
  ],
  client: {
    C2: [
      says(
        "Something that is no fuse stands in the place of a fuse. A wire could get hot and burn. Put in the right fuse soon.",
        is("element", "no-fuse"),
      ),
      says(
        "A fuse is too big for its wire. The wire could get hot and burn. Put in the right fuse soon.",
        no("cable-suits"),
      ),
    ],
    C3: "A fuse is not the right one for its holder. The wire can take it. Put in the right one.",
    FI: unsure("We could not find out if a fuse is too big for its wire. This must be looked at soon.", [
      "cable-suits",
      "element",
    ]),
    none: "The fuse is the right one.",
  },
  remedies: [
    {
      words: "Fit fuse wire or a link of the carrier's rating that suits the cable.",
      changes: { element: "right", "cable-suits": "yes" },
    },
  ],
  examples: [
    {
      name: "30 A wire in a 15 A carrier, cable 20 A",
      facts: { element: "larger", "cable-suits": false },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: 30 A > 0.725 × 20 A",
    },
    {
      name: "solid copper in the carrier",
      facts: { element: "no-fuse" },
      possible: ["C2"],
      source: "trade practice: no overcurrent protection",
    },
    {
      name: "larger wire, cable large enough",
      facts: { element: "larger", "cable-suits": true },
      possible: ["C3"],
      source: "trade practice: marking no longer true",
    },
    {
      name: "larger wire, size of cable not known",
      facts: { element: "larger" },
      possible: ["C3", "C2"],
      missing: ["cable-suits"],
      source: "union over the capacity of the cable",
    },
  ],
});
