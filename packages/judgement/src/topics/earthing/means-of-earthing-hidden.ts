import { ALWAYS, all, any, held, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The means of earthing cannot be seen, while a reading may say that there is one. */
export const meansOfEarthingHidden = topic({
  id: "means-of-earthing-hidden",
  title: "Means of earthing cannot be seen",
  group: "earthing",
  items: ["earthing.arrangement"],
  facts: {
    "means-seen": ranked({
      asks: "What do you see the main earthing terminal connected to?",
      effort: "glance",
      values: {
        proper: "the connection to the distributor's terminal or to an electrode is seen",
        nothing: "no connection to the distributor's terminal or to an electrode can be seen",
        "chance-only": "what is seen is pipework or the earth of a neighbour, and nothing else",
      },
    }),
    "loop-usual": yesNo({
      asks: "With the earthing conductor off the terminal, is the external loop impedance as usual for the system?",
      effort: "measured",
      yes: "the external loop impedance is as usual for the system",
      no: "the external loop impedance is not as usual for the system",
      worse: "no",
      worked: { by: "external-impedance", met: "yes", notMet: "no" },
    }),
    path: ranked({
      asks: "Traced to its end, what is the earth path?",
      effort: "beyond",
      values: {
        proper: "traced, it ends at the distributor's terminal or at an electrode",
        chance: "traced, it is pipework or the earth of a neighbour, which may go at any time",
        none: "traced, it ends nowhere",
      },
    }),
  },
  contested: {
    "reading-alone": {
      question: "Does a good external loop impedance alone show that there is a means of earthing?",
      positions: {
        "not-enough": {
          words: "a good reading with no path to be seen does not show what gives it",
          because: "a pipe or a neighbour's earth reads as well, and can be taken away without a word",
        },
        enough: {
          words: "a good reading is accepted, seen or not",
          because: "a lasting value of a fraction of an ohm hardly comes from anything but the supply's own earth",
        },
      },
    },
  },
  paths: [
    {
      id: "earth-not-there",
      hazard: "shock-under-fault",
      route: "the chance path is gone when a fault makes metal live, and somebody touches it",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and metal that can be touched", [
          "416.1",
        ]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "a lasting means of earthing",
          gone: any(
            is("means-seen", "chance-only"),
            all(
              is("means-seen", "nothing"),
              any(no("loop-usual"), all(is("path", "chance", "none"), not(held("reading-alone", "enough")))),
            ),
          ),
          sound: NEVER,
          regulations: ["411.3.1.1", "542.1.1", "542.1.2"],
        },
      ],
    },
  ],
  departures: [],
  client: {
    C2: [
      says(
        "The wiring has no sure link to earth. If a fault comes, metal could give a shock. Have a proper earth put in soon.",
        any(is("path", "chance", "none"), is("means-seen", "chance-only")),
      ),
      says(
        "The earth of the wiring gave a poor test. If a fault comes, metal could give a shock. Have it put right soon.",
        no("loop-usual"),
      ),
    ],
    FI: [
      unsure(
        "We could not see how the wiring is earthed. The test was good, but the path is hid. It must be traced.",
        ["path"],
        all(yes("loop-usual"), is("means-seen", "nothing")),
      ),
      unsure("We could not find out how well the wiring is earthed. It must be traced.", [
        "means-seen",
        "loop-usual",
        "path",
      ]),
    ],
    none: [
      says("The wiring is earthed well enough.", any(is("means-seen", "proper"), is("path", "proper"))),
      says("The test of the earth was good.", yes("loop-usual")),
    ],
  },
  remedies: [
    {
      words: "Open up at the intake, or ask the distributor, and make the connection visible.",
      changes: { "means-seen": "proper" },
    },
    {
      words: "Run a new earthing conductor to the distributor's terminal or to an electrode, in view.",
      changes: { "means-seen": "proper", "loop-usual": "yes", path: "proper" },
    },
  ],
  examples: [
    {
      name: "may be hidden in plaster, 0.24 Ω, tracing outside the extent",
      facts: {
        "means-seen": "nothing",
        "loop-usual": true,
        path: { notKnown: "limited", reason: "the wall was not to be opened" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade practice: a good value with no visible path",
    },
    {
      name: "the same where the reading is accepted",
      facts: { "means-seen": "nothing", "loop-usual": true },
      positions: { "reading-alone": "enough" },
      possible: ["none"],
      classification: "none",
      source: "trade practice: test value accepted",
    },
    {
      name: "only the water pipe is connected",
      facts: { "means-seen": "chance-only" },
      possible: ["C2"],
      source: "regulation 542.2.6",
    },
    {
      name: "traced to the water pipe",
      facts: { "means-seen": "nothing", "loop-usual": true, path: "chance" },
      possible: ["C2"],
      source: "trade practice: a chance path is no means of earthing",
    },
    {
      name: "not seen, and the reading is far too high",
      facts: { "means-seen": "nothing", "loop-usual": false },
      possible: ["C2"],
      source: "regulation 411.3.1.1",
    },
    {
      name: "not seen, nothing else known",
      facts: { "means-seen": "nothing" },
      possible: ["none", "C2"],
      missing: ["loop-usual", "path"],
      source: "union over reading and path",
    },
  ],
});
