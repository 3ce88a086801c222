import { ALWAYS, all, any, held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Meter tails whose sheath is missing or damaged, outside an enclosure. */
export const meterTailsExposed = topic({
  id: "meter-tails-exposed",
  title: "Meter tails without sheath or protection",
  group: "intake",
  items: ["intake.meter-tails"],
  facts: {
    insulation: ranked({
      asks: "What covers the conductors of the tails where they can be seen?",
      effort: "glance",
      values: {
        sheathed: "insulation and sheath cover the tails throughout",
        "single-layer": "the sheath stops short, and sound basic insulation shows",
        damaged: "the insulation itself is cut, cracked or crumbling, and no live metal can be touched",
        bare: "live metal of the tails can be touched",
      },
    }),
    around: ranked({
      asks: "What is around the place?",
      effort: "glance",
      values: {
        enclosed: "an enclosure that needs a tool or key to open is around it",
        cupboard: "a cupboard whose door is in place and shuts is around it",
        open: "nothing is around it, or the door of the cupboard is missing or does not shut",
      },
    }),
    knocks: ranked({
      asks: "How likely is it to be knocked, rubbed, or reached by stored things, tools or weather?",
      effort: "glance",
      values: {
        unlikely: "it is high up or out of the way, and not likely to be damaged",
        likely: "it is within reach of knocks, stored things, passers-by or weather",
      },
    }),
  },
  contested: {
    cupboard: {
      question: "Is a cupboard that shuts enough around single-insulated tails?",
      positions: {
        "falls-short": {
          words: "it keeps harm away, and is short of the enclosure that is asked for",
          because: "521.10.1 wants unsheathed conductors in an enclosure that is opened on purpose, with a tool or key",
        },
        enough: {
          words: "it is enclosure enough",
          because: "basic insulation is whole, and nothing reaches it while the door is shut",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "something cuts or wears through the insulation of a tail, and somebody touches the conductor",
      exists: ALWAYS,
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the tails",
          gone: is("insulation", "bare"),
          sound: is("insulation", "sheathed"),
          regulations: ["416.1"],
        },
        {
          id: "around",
          provision: "barrier-or-enclosure",
          words: "an enclosure, or a place where nothing strikes the tails",
          gone: any(
            is("insulation", "damaged"),
            all(is("insulation", "bare"), is("around", "cupboard", "open")),
            all(is("around", "open"), is("knocks", "likely")),
          ),
          sound: NEVER,
          regulations: ["416.2.1", "522.6.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(
        is("insulation", "single-layer", "damaged", "bare"),
        any(is("around", "open"), all(is("around", "cupboard"), held("cupboard", "falls-short"))),
      ),
      words: "unsheathed conductors are not in an enclosure",
      regulations: ["521.10.1"],
    },
  ],
  client: {
    C1: "Live metal of the main wires can be touched. It can kill. Keep away until it is covered.",
    C2: [
      says(
        "The main wires by the meter are not covered well. If they get cut, they could give a shock. Have them covered soon.",
        is("insulation", "single-layer"),
      ),
      says(
        "The cover of the main wires by the meter is damaged. They could give a shock. Have them put right soon.",
        is("insulation", "damaged"),
      ),
      says(
        "The main wires are bare inside a closed box. If it is opened, they could give a shock. Have them covered soon.",
        is("insulation", "bare"),
      ),
    ],
    C3: "The outer cover of the main wires stops short. It is not a danger now. A full cover is better.",
    FI: [
      unsure("We could not see if the main wires by the meter are covered well. This must be looked at.", [
        "insulation",
        "around",
      ]),
      unsure("We could not find out if the main wires by the meter may be knocked. This must be looked at.", [
        "knocks",
      ]),
    ],
    none: "The main wires by the meter are covered well enough.",
  },
  remedies: [
    {
      words: "Refit or replace the door of the cupboard, with a lock that takes a key or tool.",
      changes: { around: "enclosed" },
    },
    {
      words: "Put an enclosure or trunking that needs a tool to open around the unsheathed part.",
      changes: { around: "enclosed", knocks: "unlikely" },
    },
    {
      words:
        "Have the tails withdrawn into the enclosures or replaced by sheathed ones; the distributor or supplier isolates.",
      changes: { insulation: "sheathed" },
    },
  ],
  examples: [
    {
      name: "single-insulated tails, outside cupboard without door",
      facts: { insulation: "single-layer", around: "open", knocks: "likely" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one layer, open to knocks and weather",
    },
    {
      name: "the same, high up and not likely to be damaged",
      facts: { insulation: "single-layer", around: "open", knocks: "unlikely" },
      possible: ["C3"],
      source: "trade practice: high position, no likely damage",
    },
    {
      name: "in a meter cupboard with its door",
      facts: { insulation: "single-layer", around: "cupboard" },
      possible: ["C3"],
      source: "regulation 521.10.1",
    },
    {
      name: "the same where a cupboard is held to be enough",
      facts: { insulation: "single-layer", around: "cupboard" },
      positions: { cupboard: "enough" },
      possible: ["none"],
      source: "trade discussion of tails in meter cupboards",
    },
    {
      name: "single-insulated inside a box that needs a tool",
      facts: { insulation: "single-layer", around: "enclosed" },
      possible: ["none"],
      source: "regulation 521.10.1",
    },
    {
      name: "copper shows at the meter, under the stairs",
      facts: { insulation: "bare", around: "open", knocks: "likely" },
      possible: ["C1"],
      source: "trade practice: live parts in reach",
    },
    {
      name: "rubber tails that crumble, door shut",
      facts: { insulation: "damaged", around: "cupboard", knocks: "unlikely" },
      possible: ["C2"],
      source: "trade practice: insulation failing",
    },
    {
      name: "position not said",
      facts: { insulation: "single-layer", around: "open" },
      possible: ["C3", "C2"],
      missing: ["knocks"],
      source: "union over the position",
    },
  ],
});
