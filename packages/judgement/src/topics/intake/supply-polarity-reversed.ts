import { ALWAYS, all, held, NEVER, no, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Line and neutral of the incoming supply are the wrong way round. */
export const supplyPolarityReversed = topic({
  id: "supply-polarity-reversed",
  title: "Polarity of the supply reversed",
  group: "intake",
  items: ["intake.polarity"],
  facts: {
    correct: yesNo({
      asks: "Is the polarity of the supply right at the origin?",
      effort: "measured",
      yes: "the polarity of the supply is right",
      no: "line and neutral of the supply are reversed",
      worse: "no",
      worked: { by: "supply-polarity", met: "yes", notMet: "no" },
    }),
    "earth-live": yesNo({
      asks: "Against true earth, is the earthed metal of the installation live?",
      effort: "measured",
      yes: "earthed metal is at line voltage against true earth",
      no: "earthed metal is at about the potential of true earth",
      worse: "yes",
    }),
    "all-double-pole": yesNo({
      asks: "Do all devices and switches break both conductors?",
      effort: "opened",
      yes: "every protective device and every switch breaks both conductors",
      no: "fuses, breakers or switches break one conductor only",
      worse: "no",
    }),
  },
  contested: {
    "reversed-now": {
      question: "Is a reversed supply danger now, or one event away?",
      positions: {
        "one-event": {
          words: "it is one event away from danger",
          because: "live parts are still covered, until somebody opens what is switched off",
        },
        now: {
          words: "it is danger now",
          because: "people change lamps and clean with the switch off, and rely on it every day",
        },
      },
    },
  },
  paths: [
    {
      id: "off-yet-live",
      hazard: "contact-with-live-parts",
      route: "somebody touches a part that is switched off or whose fuse has blown, and that is still live",
      exists: ALWAYS,
      layers: [
        {
          id: "covers",
          provision: "barrier-or-enclosure",
          words: "the covers of lamps, accessories and equipment",
          gone: all(no("correct"), no("all-double-pole"), held("reversed-now", "now")),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
        {
          id: "in-line",
          provision: "isolation",
          words: "switching and protection in the line conductor",
          gone: all(no("correct"), no("all-double-pole")),
          sound: NEVER,
          regulations: ["132.14.1", "643.6"],
        },
      ],
    },
    {
      id: "live-earth",
      hazard: "shock-under-fault",
      route: "the supply's earth is joined to the reversed conductor, and everything earthed is live",
      exists: ALWAYS,
      layers: [
        {
          id: "earth",
          provision: "fault-protection",
          words: "an earthing terminal at the potential of earth",
          gone: yes("earth-live"),
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
        {
          id: "nothing-at-earth",
          provision: "surroundings",
          words: "surroundings in which nothing is at a different potential",
          gone: yes("earth-live"),
          sound: NEVER,
          regulations: ["411.3.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: no("correct"),
      words: "the polarity of the supply is wrong",
      regulations: ["132.14.1", "643.6"],
    },
  ],
  client: {
    C1: [
      says(
        "The power comes in the wrong way round. Things here are live and can kill. Keep the power off and call the network now.",
        all(no("correct"), yes("earth-live")),
      ),
      says("Metal here is live. It can kill. Keep the power off and call the power network now.", yes("earth-live")),
      says(
        "The power comes in the wrong way round. Things stay live when turned off. That can kill. Keep the power off and call the network now.",
        all(no("correct"), no("all-double-pole")),
      ),
    ],
    C2: "The power comes in the wrong way round. Things stay live when turned off. Call the power network soon.",
    C3: "The power comes in the wrong way round. The switches here still cut both wires. The network should put it right.",
    FI: [
      unsure("We could not find out if the power comes in the right way round. This must be tested soon.", ["correct"]),
      unsure(
        "The power comes in the wrong way round. We could not find out if the switches cut both wires. This must be looked at soon.",
        ["all-double-pole"],
        no("correct"),
      ),
      unsure("We could not find out if metal here is live. This must be tested soon.", ["earth-live"]),
    ],
    none: "The power comes in the right way round.",
  },
  remedies: [
    {
      words: "Switch off, call the distributor at once, and prove polarity again after its work.",
      changes: { correct: "yes", "earth-live": "no" },
    },
    {
      words: "Where the tails were crossed after the meter, isolate, put them right and prove polarity.",
      changes: { correct: "yes" },
    },
  ],
  examples: [
    {
      name: "reversed at the cut-out, breakers single-pole",
      facts: { correct: false, "earth-live": false, "all-double-pole": false },
      possible: ["C2"],
      source: "trade practice: switched-off equipment stays live",
    },
    {
      name: "the same where it is held to be danger now",
      facts: { correct: false, "earth-live": false, "all-double-pole": false },
      positions: { "reversed-now": "now" },
      possible: ["C1"],
      source: "trade discussion of reversed supply polarity",
    },
    {
      name: "earthed metal live after work in the street",
      facts: { correct: false, "earth-live": true },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: metal live now",
    },
    {
      name: "every device double-pole",
      facts: { correct: false, "earth-live": false, "all-double-pole": true },
      possible: ["C3"],
      source: "regulation 643.6",
    },
    {
      name: "earth not tried against true earth",
      facts: { correct: false, "all-double-pole": false },
      possible: ["C2", "C1"],
      missing: ["earth-live"],
      source: "union over the potential of the earth",
    },
    {
      name: "right",
      facts: { correct: true, "earth-live": false },
      possible: ["none"],
      source: "regulation 643.6",
    },
  ],
});
