import { all, any, held, is, NEVER, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { ROLE } from "./facts.ts";

/** An RCD made for one direction of supply that a source on its load side feeds. */
export const rcdOneWayFedBackwards = topic({
  id: "rcd-one-way-fed-backwards",
  title: "One-way RCD fed from its load side",
  group: "residual-current",
  items: ["sources.direction", "boards.rcd"],
  facts: {
    "fed-from-load": yesNo({
      asks: "Is there a source on its load side: solar panels, a battery, a car that gives back?",
      effort: "opened",
      yes: "a source can feed the RCD from its load side",
      no: "no source can feed the RCD from its load side",
      worse: "yes",
    }),
    direction: ranked({
      asks: "For what direction of supply is it made, by its marks or its maker's paper?",
      effort: "opened",
      values: {
        "either-way": "the RCD is made to be fed from either side",
        "one-way": "the RCD is marked for a supply side and a load side, and no paper of its maker allows the reverse",
      },
    }),
    role: ROLE,
  },
  contested: {
    "additional-only": {
      question: "What weight has it where the RCD gives additional protection only?",
      positions: {
        improvement: {
          words: "it is an improvement to advise",
          because: "faults are cleared without it, and it opens in its test",
        },
        "counts-too": {
          words: "it is potentially dangerous as well",
          because: "opening while fed from behind can burn the trip coil, and then it is dead unnoticed",
        },
      },
    },
  },
  paths: [
    {
      id: "trip-burnt",
      hazard: "shock-under-fault",
      route: "the RCD opens while fed from behind, its trip burns out, and the next fault or shock is not cut off",
      exists: all(
        yes("fed-from-load"),
        any(
          is("role", "fault-protection"),
          all(is("role", "additional", "wet-or-outdoors"), held("additional-only", "counts-too")),
        ),
      ),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts, leads and tools", ["416.1"]),
        {
          id: "rcd",
          provision: "fault-protection",
          words: "an RCD that goes on working whichever side feeds it",
          gone: is("direction", "one-way"),
          sound: NEVER,
          regulations: ["530.3.201"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("fed-from-load"), is("direction", "one-way")),
      words: "a one-way device is connected where current can flow in both directions",
      regulations: ["530.3.201"],
    },
  ],
  client: {
    C2: "A safety switch can be fed the wrong way round. It may stop working with no sign. Change it soon.",
    C3: "A safety switch is not made for power from both sides. A switch made for it would be better.",
    FI: unsure("We could not find out if a safety switch may be fed from both sides. This must be looked at soon.", [
      "fed-from-load",
      "direction",
      "role",
    ]),
    none: "The safety switch may be fed as it is.",
  },
  remedies: [
    {
      words: "Ask the maker whether the device may be fed from its load side, and keep the answer with the papers.",
      changes: { direction: "either-way" },
    },
    {
      words: "Move the source to a way of its own that no one-way device stands before.",
      changes: { "fed-from-load": "no" },
    },
    { words: "Replace the device by one made for both directions.", changes: { direction: "either-way" } },
  ],
  examples: [
    {
      name: "solar panels behind a one-way RCD, TT",
      facts: { "fed-from-load": true, direction: "one-way", role: "fault-protection" },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion: one-way devices fed backwards",
    },
    {
      name: "the same on TN, additional protection only",
      facts: { "fed-from-load": true, direction: "one-way", role: "additional" },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: one-way devices fed backwards",
    },
    {
      name: "additional protection held to count too",
      facts: { "fed-from-load": true, direction: "one-way", role: "additional" },
      positions: { "additional-only": "counts-too" },
      possible: ["C2"],
      source: "trade discussion: one-way devices fed backwards",
    },
    {
      name: "maker's paper allows it",
      facts: { "fed-from-load": true, direction: "either-way" },
      possible: ["none"],
      source: "regulation 530.3.201",
    },
    {
      name: "no marks, maker not reached",
      facts: {
        "fed-from-load": true,
        direction: { notKnown: "limited", reason: "no marks, maker no longer there" },
        role: "fault-protection",
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what the device is made for",
    },
    {
      name: "marks not looked at",
      facts: { "fed-from-load": true, role: "fault-protection" },
      possible: ["none", "C2"],
      missing: ["direction"],
      source: "union over what the device is made for",
    },
  ],
});
