import { all, any, held, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A hot tub or spa bath outdoors. */
export const hotTubOutdoors = topic({
  id: "hot-tub-outdoors",
  title: "Outdoor hot tub",
  group: "outdoors",
  items: ["special.pools", "outdoors.weather", "outdoors.rcd"],
  facts: {
    "rcd-30ma": yesNo({
      asks: "Is it protected by a working RCD of 30 mA or less of a type that suits it?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less that suits it protects it",
      no: "no working RCD of 30 mA or less that suits it protects it",
      worse: "no",
      worked: { by: "additional-protection", notMet: "no" },
    }),
    feed: ranked({
      asks: "How is it fed?",
      effort: "glance",
      values: {
        fixed: "a fixed cable and a weatherproof isolator feed it",
        "dry-plug": "a plug and socket made for outdoors feed it, out of reach from the water",
        unsuited: "an extension lead, or a plug or isolator that gets wet or can be reached from the water, feeds it",
      },
    }),
    earth: ranked({
      asks: "What earth does it use, and what metal can a wet person touch?",
      effort: "measured",
      values: {
        separate: "it has an electrode of its own, or no metal with the supply's earth can be touched",
        "pme-covered":
          "it uses the earth of a combined neutral and earth supply, and stands on a raised or insulating base",
        "pme-on-ground":
          "it uses the earth of a combined neutral and earth supply, with metal that a person on wet ground touches",
      },
    }),
  },
  contested: {
    "broken-neutral": {
      question: "Does a possible break of the supplier's neutral count as the one foreseeable event?",
      positions: {
        improvement: {
          words: "a break in the supplier's conductor is too rare to count",
          because: "no rule forbids the arrangement for a tub that is not a pool, and the makers accept it",
        },
        counts: {
          words: "a break in the supplier's conductor is foreseeable",
          because: "no RCD clears it, and a wet person on the ground is the worst case",
        },
      },
    },
  },
  paths: [
    {
      id: "live-water",
      hazard: "shock-under-fault",
      route: "a heater or pump fails and a person in the water is in the way of the current",
      exists: no("rcd-30ma"),
      layers: [oneEventAway("basic", "insulation", "the insulation of heater and pump", ["416.1", "411.3.3"])],
    },
    {
      id: "wet-feed",
      hazard: "contact-with-live-parts",
      route: "a wet person handles the plug or lead, or water gets into it",
      exists: is("feed", "unsuited"),
      layers: [oneEventAway("plug", "barrier-or-enclosure", "the casing of plug and lead", ["512.2.1", "522.3.1"])],
    },
    {
      id: "broken-neutral",
      hazard: "shock-under-fault",
      route: "the supplier's neutral breaks and the metal of the tub rises to a voltage against the ground",
      exists: all(is("earth", "pme-on-ground"), held("broken-neutral", "counts")),
      layers: [
        {
          id: "neutral",
          provision: "fault-protection",
          words: "the supplier's unbroken neutral",
          gone: NEVER,
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(no("rcd-30ma"), is("feed", "unsuited"), is("earth", "pme-on-ground")),
      words: "the supply of the tub is short of what its place asks",
      regulations: ["411.3.3", "512.2.1"],
    },
  ],
  client: {
    C2: "The hot tub is not wired in a safe way. A fault could give a shock in the water. Do not use it until it is fixed.",
    C3: "The earth of the hot tub is not ideal. It is not a danger now. A separate earth is advised.",
    FI: unsure("We could not find out if the hot tub is wired in a safe way. This must be looked at soon.", [
      "rcd-30ma",
      "feed",
      "earth",
    ]),
    none: "The hot tub has a safe supply.",
  },
  remedies: [
    { words: "Protect it by a 30 mA RCD of a suitable type.", changes: { "rcd-30ma": "yes" } },
    { words: "Feed it by a fixed cable and a weatherproof isolator out of reach.", changes: { feed: "fixed" } },
    { words: "Give it an electrode and keep the supply's earth away from it.", changes: { earth: "separate" } },
  ],
  examples: [
    {
      name: "fed by an extension lead that lies in the wet",
      facts: { "rcd-30ma": true, feed: "unsuited" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water entry is to be expected",
    },
    {
      name: "no RCD",
      facts: { "rcd-30ma": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one fault from danger in the water",
    },
    {
      name: "supply's earth, metal on the ground",
      facts: { "rcd-30ma": true, feed: "fixed", earth: "pme-on-ground" },
      possible: ["C3"],
      source: "trade discussion of tubs and broken neutrals",
    },
    {
      name: "the same, a broken neutral held foreseeable",
      facts: { "rcd-30ma": true, feed: "fixed", earth: "pme-on-ground" },
      positions: { "broken-neutral": "counts" },
      possible: ["C2"],
      source: "trade discussion of tubs and broken neutrals",
    },
    {
      name: "fixed supply, raised base",
      facts: { "rcd-30ma": true, feed: "fixed", earth: "pme-covered" },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "way of feeding not seen",
      facts: { "rcd-30ma": true, earth: "separate" },
      possible: ["none", "C2"],
      missing: ["feed"],
      source: "union over the feed",
    },
  ],
});
