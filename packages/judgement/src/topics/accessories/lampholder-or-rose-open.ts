import { any, held, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A ceiling rose, pendant, batten or wall lampholder with its cover or ring missing, loose or worn. */
export const lampholderOrRoseOpen = topic({
  id: "lampholder-or-rose-open",
  title: "Open or worn lampholder or ceiling rose",
  group: "accessories",
  items: ["accessories.luminaires", "accessories.condition"],
  facts: {
    state: ranked({
      asks: "What is the state of the rose, lampholder and pendant flex?",
      effort: "glance",
      values: {
        whole: "rose, lampholder and flex are whole",
        "cores-show": "cores show where the flex goes in, with their insulation sound",
        loose: "a cover, ring or holder is cracked, loose or brittle with heat",
        off: "a cover or ring is missing, and live metal stays shielded",
        "live-open": "a cover or ring is missing, and a finger gets at live metal other than the contacts for the lamp",
      },
    }),
    "from-the-floor": yesNo({
      asks: "Can it be reached standing on the floor or on furniture that stands there?",
      effort: "glance",
      yes: "it can be reached from the floor or from what stands there",
      no: "it can be reached only from steps",
      worse: "yes",
    }),
  },
  contested: {
    height: {
      question: "Does a ceiling too high to reach count as a layer between a person and live metal in a home?",
      positions: {
        "does-not-count": {
          words: "live metal without a cover counts as touchable at any height people get to with steps",
          because: "placing out of reach is no measure for places of ordinary persons, 410.3.5",
        },
        counts: {
          words: "at a height that takes steps one more event is needed",
          because: "nobody touches it until somebody climbs up to change a lamp",
        },
      },
    },
  },
  paths: [
    {
      id: "breaks",
      hazard: "contact-with-live-parts",
      route: "what is left of the cover gives way at the next lamp change, and somebody touches live metal",
      exists: is("state", "loose", "off", "live-open"),
      layers: [oneEventAway("cover", "barrier-or-enclosure", "what is left of the cover", ["416.2.3", "134.1.1"])],
    },
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody who changes a lamp or dusts touches live metal",
      exists: is("state", "live-open"),
      layers: [
        {
          id: "height",
          provision: "out-of-reach",
          words: "height above the floor",
          gone: any(yes("from-the-floor"), held("height", "does-not-count")),
          sound: NEVER,
          regulations: ["416.2.1", "410.3.5"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("state", "cores-show", "loose", "off", "live-open"),
      words: "rose, lampholder or flex is not whole or not held as it should be",
      regulations: ["134.1.1", "526.6", "526.8"],
    },
  ],
  client: {
    C1: "A light has its cover off. A finger can touch live metal. Keep it switched off and have it made safe now.",
    C2: [
      says(
        "A light fitting is loose, worn or lacks a part. It could give a shock. Have it fixed soon.",
        is("state", "loose", "off"),
      ),
      says(
        "A light high up has its cover off. Live metal could be touched from steps. Keep it switched off and have it fixed soon.",
        is("state", "live-open"),
      ),
    ],
    C3: "The wires of a hanging light show a little. It is not a danger now. It should be put right.",
    FI: unsure("We could not see if a light fitting is safe. This must be looked at soon.", [
      "state",
      "from-the-floor",
    ]),
    none: "The light fittings are whole.",
  },
  remedies: [
    {
      words: "Refit or replace cover, ring or holder and remake the flex.",
      changes: { state: "whole" },
    },
  ],
  examples: [
    {
      name: "rose without cover, live terminals in reach of a finger",
      facts: { state: "live-open" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal",
    },
    {
      name: "the same at a high ceiling, milder view",
      facts: { state: "live-open", "from-the-floor": false },
      positions: { height: "counts" },
      possible: ["C2"],
      source: "trade discussion of reach",
    },
    {
      name: "lampholder brittle with heat",
      facts: { state: "loose" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: it breaks at the next lamp change",
    },
    {
      name: "cores show above the lampholder",
      facts: { state: "cores-show" },
      possible: ["C3"],
      source: "trade practice: cord grip not used",
    },
    {
      name: "cover off, reach not tried",
      facts: { state: "off | live-open" },
      possible: ["C2", "C1"],
      missing: ["state"],
      source: "union over what a try would show",
    },
  ],
});
