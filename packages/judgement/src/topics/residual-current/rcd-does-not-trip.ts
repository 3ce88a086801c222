import { all, any, held, is, no, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { ROLE } from "./facts.ts";

/** An RCD that does not open at its rated residual current in time, or whose test button does nothing. */
export const rcdDoesNotTrip = topic({
  id: "rcd-does-not-trip",
  title: "RCD does not trip",
  group: "residual-current",
  items: ["boards.rcd"],
  facts: {
    operates: yesNo({
      asks: "Tested at its rated residual current, does it open within the time of its standard?",
      effort: "measured",
      yes: "the RCD opens in time at its rated residual current",
      no: "the RCD does not open in time at its rated residual current",
      worse: "no",
      worked: { by: "rcd-time", matter: "rcd-not-slow", met: "yes", notMet: "no" },
    }),
    button: yesNo({
      asks: "Does it open when its test button is pressed?",
      effort: "glance",
      yes: "the RCD opens when its test button is pressed",
      no: "the RCD does not open when its test button is pressed",
      worse: "no",
      worked: { by: "rcd-time", matter: "rcd-button", met: "yes", notMet: "no" },
    }),
    role: ROLE,
  },
  contested: {
    "fitted-but-dead": {
      question: "Is an RCD that is there and does not work worse than one that was never there?",
      positions: {
        worse: {
          words: "it is: people count on what is fitted, and it is a fault of equipment",
          because: "they use leads and tools as if they were protected",
        },
        "same-as-absent": {
          words: "it is not: where only additional protection is lost, it stands as if it were absent",
          because: "basic and fault protection are what they were",
        },
      },
    },
    "button-only": {
      question: "What weight has a dead test button where the timed test is good?",
      positions: {
        improvement: {
          words: "it wants improving: the user can no longer exercise it",
          because: "the sensing part has been shown to work today",
        },
        failing: {
          words: "it is a failing device",
          because: "a device of which one part has failed is not one to hang a life on",
        },
      },
    },
  },
  paths: [
    {
      id: "fault-stays",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault and stays live, and somebody touches it",
      exists: is("role", "fault-protection"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of the live parts", ["416.1"]),
        {
          id: "rcd-disconnects",
          provision: "fault-protection",
          words: "the RCD that disconnects the fault",
          gone: any(no("operates"), all(no("button"), held("button-only", "failing"))),
          sound: all(yes("operates"), any(yes("button"), held("button-only", "improvement"))),
          regulations: ["411.5.2", "411.4.4"],
        },
      ],
    },
    {
      id: "touch-stays",
      hazard: "contact-with-live-parts",
      route: "insulation of a lead or tool is cut, somebody touches the core, and the current does not stop",
      exists: any(
        is("role", "wet-or-outdoors"),
        all(is("role", "additional"), held("fitted-but-dead", "worse")),
        is("role", "fault-protection"),
      ),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of leads and tools", ["416.1"]),
        {
          id: "rcd-additional",
          provision: "additional-protection",
          words: "the RCD that cuts a current through the body short",
          gone: any(no("operates"), all(no("button"), held("button-only", "failing"))),
          sound: all(yes("operates"), any(yes("button"), held("button-only", "improvement"))),
          regulations: ["415.1.1", "643.8"],
        },
      ],
    },
  ],
  departures: [
    {
      when: no("operates"),
      words: "the RCD does not operate as its standard asks",
      regulations: ["643.8"],
    },
    {
      when: no("button"),
      words: "the test button of the RCD does not work",
      regulations: ["643.10"],
    },
  ],
  client: {
    C2: "The safety switch does not work as it should. It may not save you from a shock. Change it soon.",
    C3: [
      says(
        "The safety switch has a fault. Other parts of the wiring still guard you. It would be better to change it.",
        no("operates"),
      ),
      says(
        "The test button of the safety switch does not work. The switch itself worked in our test. It would be better to change it.",
        all(yes("operates"), no("button")),
      ),
    ],
    FI: [
      unsure("We could not test the safety switch. It may not work. This must be looked at soon.", ["operates"]),
      unsure("We could not try the button of the safety switch. It may not work. This must be looked at soon.", [
        "button",
      ]),
      unsure("We could not find out what the safety switch has to guard. This must be looked at soon.", ["role"]),
    ],
    none: "The safety switch works.",
  },
  remedies: [
    {
      words: "Exercise the device, test it again with its load off, and replace it where it fails again.",
      changes: { operates: "yes", button: "yes" },
    },
  ],
  examples: [
    {
      name: "does not trip, TT",
      facts: { operates: false, button: false, role: "fault-protection" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection lost",
    },
    {
      name: "does not trip, sockets of a house on TN",
      facts: { operates: false, button: true, role: "additional" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: device fitted and relied upon does not work",
    },
    {
      name: "the same held to be as if absent",
      facts: { operates: false, button: true, role: "additional" },
      positions: { "fitted-but-dead": "same-as-absent" },
      possible: ["C3"],
      source: "trade discussion: only additional protection lost",
    },
    {
      name: "button dead, time good",
      facts: { operates: true, button: false, role: "additional" },
      possible: ["C3"],
      source: "trade practice: the user can no longer exercise it",
    },
    {
      name: "button dead held to be a failing device",
      facts: { operates: true, button: false, role: "additional" },
      positions: { "button-only": "failing" },
      possible: ["C2"],
      source: "trade discussion: test button without effect",
    },
    {
      name: "button good, not tested by instrument",
      facts: { button: true, role: "fault-protection" },
      possible: ["none", "C2"],
      missing: ["operates"],
      source: "union over the test",
    },
  ],
});
