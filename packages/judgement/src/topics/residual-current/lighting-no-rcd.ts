import { all, any, held, is, NEVER, no, oneKind, ranked, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Luminaires in a home without 30 mA RCD protection. */
export const lightingNoRcd = topic({
  id: "lighting-no-rcd",
  title: "Lights in a home without RCD",
  group: "residual-current",
  items: ["circuits.additional-protection"],
  facts: {
    "rcd-30ma": yesNo({
      asks: "Are the lights behind an RCD of 30 mA or less that works?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects the lights",
      no: "no RCD of 30 mA or less protects the lights",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
    premises: oneKind({
      asks: "Is it in a home?",
      effort: "glance",
      values: { home: "the lights are in a home", elsewhere: "the lights are not in a home" },
    }),
    "asked-when-made": yesNo({
      asks: "Was the circuit made when an RCD was already asked for on lights in homes (from 2019)?",
      effort: "opened",
      yes: "the circuit was made when an RCD was already asked for",
      no: "the circuit was made before an RCD was asked for",
      worse: "yes",
    }),
    place: ranked({
      asks: "Is any of these lights outdoors or in the wet within reach, and is it sound?",
      effort: "glance",
      values: {
        dry: "the lights are indoors and dry, or out of reach",
        "wet-sound": "a light within reach is outdoors or in the wet, and it is sound and sealed",
        "wet-damaged": "a light within reach is outdoors or in the wet, and its seal or casing is damaged",
      },
    }),
  },
  contested: {
    "older-circuit": {
      question: "Is the missing RCD on an older lighting circuit worth an entry?",
      positions: {
        improvement: {
          words: "it is an improvement to advise",
          because: "today's edition is the yardstick, and nothing endangers anyone directly",
        },
        "no-entry": {
          words: "it is no matter for the report where the circuit met its edition",
          because: "the requirement came later, and lights are seldom handled while live",
        },
      },
    },
  },
  paths: [
    {
      id: "wet-light",
      hazard: "contact-with-live-parts",
      route: "water gets into a light that people touch, and the current through them does not stop",
      exists: is("place", "wet-damaged"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation that is left inside the light", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: no("rcd-30ma"),
          sound: NEVER,
          regulations: ["411.3.4", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(
        no("rcd-30ma"),
        is("premises", "home"),
        any(held("older-circuit", "improvement"), yes("asked-when-made")),
      ),
      words: "luminaires in a home have no RCD of 30 mA or less",
      regulations: ["411.3.4"],
    },
    {
      when: is("place", "wet-damaged"),
      words: "a light in the wet is not kept fit for its place",
      regulations: ["512.2"],
    },
  ],
  client: {
    C2: "A light in the wet is damaged and has no fast safety switch. It could give a shock. Repair it soon.",
    C3: "The lights have no fast safety switch, or one wants a repair. There is no danger now. It is advised.",
    FI: "We could not find out if the lights in wet places are safe. This must be looked at soon.",
    none: "The lights are protected well enough.",
  },
  remedies: [
    { words: "Replace the damaged light by one that is fit for its place.", changes: { place: "wet-sound" } },
    { words: "Protect the lighting circuit by a 30 mA RCD or RCBO.", changes: { "rcd-30ma": "yes" } },
  ],
  examples: [
    {
      name: "older home, all else good",
      facts: { "rcd-30ma": false, premises: "home", "asked-when-made": false, place: "dry" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: requirement of later date, no direct danger",
    },
    {
      name: "the same held to be no entry",
      facts: { "rcd-30ma": false, premises: "home", "asked-when-made": false, place: "dry" },
      positions: { "older-circuit": "no-entry" },
      possible: ["none"],
      source: "trade discussion: requirement of later date",
    },
    {
      name: "an office",
      facts: { "rcd-30ma": false, premises: "elsewhere", place: "dry" },
      possible: ["none"],
      source: "regulation 411.3.4: homes only",
    },
    {
      name: "broken garden light within reach",
      facts: { "rcd-30ma": false, premises: "home", place: "wet-damaged" },
      possible: ["C2"],
      source: "trade practice: water entry and nothing to cut the current short",
    },
    {
      name: "outdoor lights not looked at",
      facts: { "rcd-30ma": false, premises: "home" },
      possible: ["C3", "C2"],
      missing: ["place"],
      source: "union over where the lights are",
    },
  ],
});
