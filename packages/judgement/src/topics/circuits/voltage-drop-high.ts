import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Voltage drop from the origin to the point of use above what the standard counts as satisfactory. */
export const voltageDropHigh = topic({
  id: "voltage-drop-high",
  title: "Voltage drop too high",
  group: "circuits",
  items: ["circuits.capacity"],
  facts: {
    within: yesNo({
      asks: "Is the voltage drop at full load within the usual limit (3 % for lighting, 5 % for other uses)?",
      effort: "measured",
      yes: "the voltage drop is within its limit",
      no: "the voltage drop is above its limit",
      worse: "no",
      worked: { by: "voltage-drop", met: "yes", notMet: "no" },
    }),
    effect: ranked({
      asks: "What does the low voltage do to what is connected?",
      effort: "glance",
      values: {
        none: "everything connected works as it should",
        nuisance: "lamps dim or equipment is sluggish",
        unsafe: "a motor stalls, a contactor drops out, or equipment that safety depends on fails",
      },
    }),
    "poor-joint": yesNo({
      asks: "Is the drop more than length and size account for, because of a poor joint?",
      effort: "measured",
      yes: "a poor joint adds to the drop",
      no: "length and size account for the whole drop",
      worse: "yes",
    }),
  },
  contested: {
    "no-effect": {
      question: "The drop is above the usual limit and everything works. Is that anything to report?",
      positions: {
        improve: {
          words: "it is short of what is counted as satisfactory, and to be improved",
          because: "525.201 and 525.202 give the ways to show it, and none is met",
        },
        nothing: {
          words: "what works safely needs no report",
          because: "525.1 asks only that equipment works safely",
        },
      },
    },
  },
  paths: [
    {
      id: "fails-to-work",
      hazard: "burns-or-fire",
      route: "equipment stalls, overheats or fails when it is needed",
      exists: all(no("within"), is("effect", "unsafe")),
      layers: [
        {
          id: "voltage",
          provision: "thermal-protection",
          words: "a voltage that equipment works safely on",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["525.1"],
        },
        oneEventAway("own-protection", "overcurrent-protection", "the equipment's own protection"),
      ],
    },
    {
      id: "hot-joint",
      hazard: "burns-or-fire",
      route: "a poor joint heats under load",
      exists: yes("poor-joint"),
      layers: [
        {
          id: "connection",
          provision: "thermal-protection",
          words: "a connection of low resistance",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["526.1"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure of the joint", ["526.5"]),
      ],
    },
  ],
  departures: [
    {
      when: all(no("within"), any(is("effect", "nuisance", "unsafe"), held("no-effect", "improve"))),
      words: "the voltage drop is above what is counted as satisfactory",
      regulations: ["525.201", "525.202"],
    },
  ],
  client: {
    C2: [
      says("A poor joint weakens the power. It could get too hot. Have it put right soon.", yes("poor-joint")),
      says(
        "The power at the far end is too weak. Things may fail when they are needed. Have it put right soon.",
        is("effect", "unsafe"),
      ),
    ],
    C3: "The power at the far end is a bit weak. It is not a danger. A thicker cable would be better.",
    FI: [
      unsure(
        "We could not find out why the power is weak at one point. It may be a hot joint. This must be looked at.",
        ["poor-joint"],
      ),
      unsure("We could not find out if the power at the far end is strong enough to be safe. This must be looked at.", [
        "effect",
        "within",
      ]),
    ],
    none: "The power at the far end is strong enough.",
  },
  remedies: [
    { words: "Find and remake the poor joint.", changes: { "poor-joint": "no" } },
    { words: "Move heavy loads nearer to the board.", changes: { within: "yes" } },
    { words: "Run a larger cable or a second circuit.", changes: { within: "yes", "poor-joint": "no" } },
  ],
  examples: [
    {
      name: "garden lights at 4 %, all work",
      facts: { within: false, effect: "none", "poor-joint": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 525.202",
    },
    {
      name: "the same held to be nothing",
      facts: { within: false, effect: "none", "poor-joint": false },
      positions: { "no-effect": "nothing" },
      possible: ["none"],
      source: "trade discussion; regulation 525.1",
    },
    {
      name: "a pump at the end of the garden stalls on starting",
      facts: { within: false, effect: "unsafe", "poor-joint": false },
      possible: ["C2"],
      source: "trade practice: a stalled motor overheats",
    },
    {
      name: "twice the drop that the length gives, joints buried",
      facts: { within: false, effect: "none", "poor-joint": { notKnown: "limited", reason: "joints not accessible" } },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the joints",
    },
    {
      name: "not reckoned",
      facts: { effect: "none", "poor-joint": false },
      possible: ["none", "C3"],
      missing: ["within"],
      source: "union over the drop",
    },
  ],
});
