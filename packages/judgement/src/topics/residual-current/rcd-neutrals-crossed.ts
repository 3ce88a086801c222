import { all, is, NEVER, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A circuit whose line and neutral do not pass the same RCD. A neutral shared by two circuits is a subject of its own. */
export const rcdNeutralsCrossed = topic({
  id: "rcd-neutrals-crossed",
  title: "Line and neutral not behind the same RCD",
  group: "residual-current",
  items: ["boards.connections", "boards.rcd"],
  facts: {
    neutral: ranked({
      asks: "On which bar does the neutral of the circuit sit?",
      effort: "opened",
      values: {
        own: "line and neutral pass the same RCD",
        "wrong-bar": "the neutral sits on the bar of another RCD, or on one without RCD",
      },
    }),
    "line-moved": yesNo({
      asks: "Has somebody taken the line off its RCD to stop it tripping?",
      effort: "opened",
      yes: "the line has been taken off its RCD",
      no: "the line is behind its RCD",
      worse: "yes",
    }),
    "rcd-counted-on": yesNo({
      asks: "Does the circuit feed what people take to be behind the RCD: sockets, outdoor or bathroom equipment?",
      effort: "glance",
      yes: "people take the circuit to be behind the RCD",
      no: "nothing on the circuit asks for an RCD",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "no-rcd-left",
      hazard: "contact-with-live-parts",
      route: "a lead or tool is damaged, somebody touches the core, and no RCD is left to cut the current short",
      exists: all(yes("line-moved"), yes("rcd-counted-on")),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of leads and tools", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD that senses the current of the circuit",
          gone: yes("line-moved"),
          sound: NEVER,
          regulations: ["411.3.3", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("neutral", "own")),
      words: "line and neutral of the circuit do not pass the same RCD",
      regulations: ["531.3.2", "514.1.2"],
    },
    {
      when: yes("line-moved"),
      words: "the circuit has been taken off its RCD",
      regulations: ["134.1.1"],
    },
  ],
  client: {
    C2: "A circuit was taken off its safety switch. A cut lead could give a shock. Have this put right soon.",
    C3: [
      says(
        "A wire is on the wrong bar in the fuse box. The safety switch may trip for no reason. Have it moved.",
        is("neutral", "wrong-bar"),
      ),
      says(
        "A circuit was taken off its safety switch. Nothing on it needs one now. Have it put back.",
        yes("line-moved"),
      ),
    ],
    FI: [
      unsure("A wire may have been taken off its safety switch. We could not find out. It must be looked at soon.", [
        "line-moved",
      ]),
      unsure(
        "A circuit was taken off its safety switch. We could not find out if it needs one. It must be looked at soon.",
        ["rcd-counted-on"],
        yes("line-moved"),
      ),
    ],
    none: "The wires of each circuit are in their place.",
  },
  remedies: [
    {
      words: "Move line and neutral of the circuit behind the same RCD.",
      changes: { neutral: "own", "line-moved": "no" },
    },
  ],
  examples: [
    {
      name: "neutral on the wrong bar, trips under load",
      facts: { neutral: "wrong-bar", "line-moved": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: it fails to the safe side",
    },
    {
      name: "sockets taken off the RCD",
      facts: { neutral: "wrong-bar", "line-moved": true, "rcd-counted-on": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: protection put out of use",
    },
    {
      name: "line not traced",
      facts: { neutral: "wrong-bar", "rcd-counted-on": true },
      possible: ["C3", "C2"],
      missing: ["line-moved"],
      source: "union over where the line goes",
    },
  ],
});
