import { all, any, held, is, no, oneKind, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Luminaires in a home without 30 mA RCD protection. Bathrooms and damaged lights outdoors are subjects of their own. */
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
      no: "no working RCD of 30 mA or less protects the lights",
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
  paths: [],
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
  ],
  client: {
    C3: "No fast safety switch that works guards the lights. Adding one is advised.",
    none: "The lights are protected well enough.",
  },
  remedies: [{ words: "Protect the lighting circuit by a 30 mA RCD or RCBO.", changes: { "rcd-30ma": "yes" } }],
  examples: [
    {
      name: "older home, all else good",
      facts: { "rcd-30ma": false, premises: "home", "asked-when-made": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: requirement of later date, no direct danger",
    },
    {
      name: "the same held to be no entry",
      facts: { "rcd-30ma": false, premises: "home", "asked-when-made": false },
      positions: { "older-circuit": "no-entry" },
      possible: ["none"],
      source: "trade discussion: requirement of later date",
    },
    {
      name: "an office",
      facts: { "rcd-30ma": false, premises: "elsewhere" },
      possible: ["none"],
      source: "regulation 411.3.4: homes only",
    },
    {
      name: "premises not known",
      facts: { "rcd-30ma": false },
      possible: ["none", "C3"],
      missing: ["premises"],
      source: "union over the use of the premises",
    },
  ],
});
