import { all, any, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Places where patients are treated with electrical equipment: bonding, RCDs, the isolated supply and what takes over. */
export const medicalPlace = topic({
  id: "medical-place",
  title: "Supply and bonding of a medical place",
  group: "special",
  items: ["special.medical"],
  facts: {
    group: ranked({
      asks: "What does the person in charge of treatment say is done with applied parts there?",
      effort: "glance",
      values: {
        "group-0": "no applied parts are used there",
        "group-1": "applied parts are used outside or within the body, and a loss of supply endangers nobody",
        "group-2":
          "applied parts are used in the heart or for vital treatment, so that a loss of supply endangers life",
      },
    }),
    bonding: yesNo({
      asks: "Are earth contacts, frames and metal round the patient joined to the bonding bar, by reading (0.2 Ω or less in group 2)?",
      effort: "measured",
      yes: "metal round the patient is joined to the bonding bar, by reading",
      no: "metal round the patient is not joined, or not well enough",
      worse: "no",
    }),
    rcd: yesNo({
      asks: "In group 1, have the socket-outlets working RCDs of 30 mA?",
      effort: "opened",
      yes: "socket-outlets of group 1 have working RCDs of 30 mA, or the place is not of group 1",
      no: "socket-outlets of group 1 lack working RCDs of 30 mA",
      worse: "no",
    }),
    "rcd-type": ranked({
      asks: "Of what type are those RCDs, by their marking?",
      effort: "glance",
      values: {
        "a-or-b": "the RCDs are of type A or B, or there are none to read",
        ac: "an RCD is of type AC, or its type cannot be read",
      },
    }),
    isolated: yesNo({
      asks: "In group 2, have the circuits of vital equipment a monitored isolated (IT) supply with a working alarm?",
      effort: "measured",
      yes: "vital equipment has a monitored isolated supply whose alarm works, or the place is not of group 2",
      no: "vital equipment of group 2 lacks a monitored isolated supply, or its alarm does not work",
      worse: "no",
    }),
    standby: yesNo({
      asks: "Does a tested supply take over in time for what must not fail?",
      effort: "measured",
      yes: "a tested supply takes over in time, or nothing there must not fail",
      no: "nothing takes over in time for what must not fail",
      worse: "no",
    }),
  },
  contested: {
    "type-ac": {
      question: "Does an RCD of type AC count as additional protection where patients are treated?",
      positions: {
        improvement: {
          words: "it opens on ordinary faults, and is short of the type that is asked for",
          because: "a damaged lead leaks alternating current, which type AC is made for",
        },
        "does-not-count": {
          words: "it does not count next to treatment equipment",
          because: "such equipment is full of electronics, whose faults can leak a current that type AC does not see",
        },
      },
    },
  },
  paths: [
    {
      id: "patient",
      hazard: "shock-under-fault",
      route: "a small voltage between two metal parts drives a current through the patient",
      exists: all(is("group", "group-1", "group-2"), no("bonding")),
      layers: [
        oneEventAway("no-fault", "insulation", "equipment and supply without a fault", ["416.1"]),
        {
          id: "bonding",
          provision: "equipotential-bonding",
          words: "bonding of the metal round the patient",
          gone: no("bonding"),
          sound: NEVER,
          regulations: ["710.415.2"],
        },
      ],
    },
    {
      id: "first-fault",
      hazard: "loss-of-supply",
      route: "a first fault or a loss of the mains stops vital treatment",
      exists: all(is("group", "group-2"), any(no("isolated"), no("standby"))),
      layers: [
        oneEventAway("supply", "surroundings", "mains and equipment without a fault"),
        {
          id: "goes-on",
          provision: "surroundings",
          words: "a supply that goes on through a first fault, and one that takes over",
          gone: any(no("isolated"), no("standby")),
          sound: NEVER,
          regulations: ["710.411.6", "710.560"],
        },
      ],
    },
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "a lead is damaged, and a patient who cannot pull away touches a live part",
      exists: all(is("group", "group-1", "group-2"), any(no("rcd"), is("rcd-type", "ac"))),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of leads and equipment", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA that sees the fault",
          gone: any(no("rcd"), all(is("rcd-type", "ac"), held("type-ac", "does-not-count"))),
          sound: NEVER,
          regulations: ["710.411.4", "710.411.3.2.1", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(
        all(is("group", "group-1", "group-2"), any(no("bonding"), no("rcd"))),
        all(is("group", "group-2"), any(no("isolated"), no("standby"))),
      ),
      words: "protection is not what the group of the medical place asks for",
      regulations: ["710.415.2", "710.411.6"],
    },
    {
      when: all(is("group", "group-1", "group-2"), yes("rcd"), is("rcd-type", "ac")),
      words: "an RCD is not of the type that the medical place asks for",
      regulations: ["710.411.3.2.1"],
    },
  ],
  client: {
    C2: "A room for treatment lacks a safety measure that patients depend on. Have it put right soon.",
    C3: "A safety switch in a room for treatment is of an older kind. It works. A newer kind is advised.",
    FI: unsure("We could not test a safety measure in a room for treatment. It must be tested soon.", [
      "group",
      "bonding",
      "rcd",
      "rcd-type",
      "isolated",
      "standby",
    ]),
    none: "The safety measures in the room for treatment are in order.",
  },
  remedies: [
    { words: "Join the metal round the patient to the bonding bar, and measure it.", changes: { bonding: "yes" } },
    {
      words: "Fit RCDs of 30 mA of type A or B for the socket-outlets of group 1.",
      changes: { rcd: "yes", "rcd-type": "a-or-b" },
    },
    {
      words: "Have the isolated supply, its alarm and the supply that takes over put right and tested.",
      changes: { isolated: "yes", standby: "yes" },
    },
  ],
  examples: [
    {
      name: "dental surgery, metal not bonded",
      facts: { group: "group-1", bonding: false },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 710.415.2",
    },
    {
      name: "waiting room",
      facts: { group: "group-0" },
      possible: ["none"],
      classification: "none",
      source: "section 710 does not apply its measures",
    },
    {
      name: "theatre, alarm of the isolated supply dead",
      facts: { group: "group-2", isolated: false },
      possible: ["C2"],
      source: "regulation 710.411.6",
    },
    {
      name: "consulting room with equipment on patients, RCD of type AC",
      facts: { group: "group-1", bonding: true, rcd: true, "rcd-type": "ac" },
      possible: ["C3"],
      classification: "C3",
      source: "regulation 710.411.3.2.1: only the type falls short",
    },
    {
      name: "the same where type AC is held not to count",
      facts: { group: "group-1", bonding: true, rcd: true, "rcd-type": "ac" },
      positions: { "type-ac": "does-not-count" },
      possible: ["C2"],
      source: "trade discussion of type AC beside electronics",
    },
    {
      name: "readings not to be taken while in use",
      facts: {
        group: "group-1",
        rcd: true,
        "rcd-type": "a-or-b",
        bonding: { notKnown: "limited", reason: "the room was in use" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the readings",
    },
    {
      name: "group 1, bonding not measured",
      facts: { group: "group-1", rcd: true, "rcd-type": "a-or-b" },
      possible: ["none", "C2"],
      missing: ["bonding"],
      source: "union over the readings",
    },
  ],
});
