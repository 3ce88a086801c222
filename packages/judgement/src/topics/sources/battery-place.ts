import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Where a battery store stands, and what a fire or gas there would do. */
export const batteryPlace = topic({
  id: "battery-place",
  title: "Place of a battery store",
  group: "sources",
  items: ["sources.storage", "fire.escape-routes"],
  facts: {
    place: ranked({
      asks: "Where does the store stand?",
      effort: "glance",
      values: {
        outside: "the store stands outside or in a building nobody sleeps in",
        "inside-apart": "the store stands indoors, away from the way out and from rooms people sleep in",
        "loft-or-void": "the store stands in a loft or void",
        "escape-or-sleeping": "the store stands on the way out or in a room people sleep in",
      },
    }),
    condition: ranked({
      asks: "Is the store sound, or swollen, damaged, leaking or hot?",
      effort: "glance",
      values: { sound: "the store is sound", damaged: "the store is damaged, swollen, leaking or hot" },
    }),
    "as-maker-asks": yesNo({
      asks: "Do fixing, clearances, surface and ventilation follow the maker's instructions?",
      effort: "opened",
      yes: "fixing, clearance and ventilation follow the maker's instructions",
      no: "fixing, clearance or ventilation do not follow the maker's instructions",
      worse: "no",
    }),
    detection: yesNo({
      asks: "Is there a linked fire alarm that would sound for a fire at the store?",
      effort: "glance",
      yes: "a linked alarm would sound for a fire at the store",
      no: "no alarm would sound for a fire at the store",
      worse: "no",
    }),
  },
  contested: {
    "way-out": {
      question: "Is a sound store on the way out or in a bedroom a danger by its place alone?",
      positions: {
        "without-alarm": {
          words: "it is, where no alarm would warn in time",
          because: "a fire there cuts the way out, and early warning is the layer that is left",
        },
        "by-place": {
          words: "it is, alarm or not",
          because: "a burning store cannot be put out and fills the way out with smoke in minutes",
        },
        "advice-only": {
          words: "it is not: the place is advice that came later",
          because: "a sound store fitted to its instructions has no fault that starts a fire",
        },
      },
    },
  },
  paths: [
    {
      id: "store-burns",
      hazard: "burns-or-fire",
      route: "the store catches fire or gives off gas where people cannot get away from it",
      exists: ALWAYS,
      layers: [
        {
          id: "cells",
          provision: "thermal-protection",
          words: "sound cells, fitted as their maker asks",
          gone: is("condition", "damaged"),
          sound: NEVER,
          regulations: ["134.1.1", "421.1.2"],
        },
        {
          id: "getting-away",
          provision: "surroundings",
          words: "a place from which people can get away in time",
          gone: any(
            all(
              is("place", "escape-or-sleeping"),
              any(all(no("detection"), held("way-out", "without-alarm")), held("way-out", "by-place")),
            ),
            all(is("place", "loft-or-void", "escape-or-sleeping"), no("as-maker-asks"), no("detection")),
          ),
          sound: all(is("place", "outside"), yes("as-maker-asks")),
          regulations: ["422.2", "421.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(no("as-maker-asks"), is("condition", "damaged"), is("place", "escape-or-sleeping")),
      words: "the store is not placed or fitted as it should be",
      regulations: ["134.1.1", "422.2"],
    },
  ],
  dangers: [
    {
      id: "damaged",
      least: "C2",
      when: is("condition", "damaged"),
      words: "the store is damaged, swollen, leaking or hot, wherever it stands",
      regulations: ["134.1.1", "421.1.1"],
    },
  ],
  client: {
    C1: "The battery is damaged and stands where a fire would trap you. Switch it off, keep away and call its maker now.",
    C2: [
      says(
        "The battery is damaged. It could catch fire. Keep away and have it made safe soon.",
        is("condition", "damaged"),
      ),
      says(
        "The battery stands where a fire could trap you. Have it moved or made safe soon.",
        is("place", "loft-or-void", "escape-or-sleeping"),
      ),
    ],
    C3: "The battery is not placed as well as it could be. It is sound. A better place or fixing would help.",
    FI: unsure("We could not find out if the battery is fitted in a safe way. This must be looked at soon.", [
      "place",
      "condition",
      "as-maker-asks",
      "detection",
    ]),
    none: "The battery stands in a good place and is sound.",
  },
  remedies: [
    { words: "Fit a linked alarm by the store.", changes: { detection: "yes" } },
    { words: "Fix and ventilate the store as its maker asks.", changes: { "as-maker-asks": "yes" } },
    {
      words: "Move a sound store out of the way out or sleeping room, or replace a damaged one.",
      changes: { place: "outside", condition: "sound", "as-maker-asks": "yes" },
    },
  ],
  examples: [
    {
      name: "swollen store outdoors, fixed as its maker asks",
      facts: { place: "outside", condition: "damaged", "as-maker-asks": true, detection: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a swollen or hot store may burn at any time",
    },
    {
      name: "sound, in a garage, as the maker asks",
      facts: { place: "outside", condition: "sound", "as-maker-asks": true, detection: false },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "under the only stairs without an alarm",
      facts: { place: "escape-or-sleeping", condition: "sound", "as-maker-asks": true, detection: false },
      possible: ["C2"],
      source: "trade practice: fire on the way out",
    },
    {
      name: "the same with an alarm",
      facts: { place: "escape-or-sleeping", condition: "sound", "as-maker-asks": true, detection: true },
      possible: ["C3"],
      source: "trade practice: fire on the way out",
    },
    {
      name: "loft not reached",
      facts: { place: "loft-or-void", detection: false },
      possible: ["none", "C2", "C1"],
      missing: ["condition", "as-maker-asks"],
      source: "union over what may be there",
    },
  ],
});
