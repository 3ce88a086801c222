import { ALWAYS, all, any, held, is, NEVER, no, oneKind, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Two circuits connected to one device, or one circuit fed from two devices. */
export const circuitsMixed = topic({
  id: "circuits-mixed",
  title: "Circuits mixed at the board",
  group: "circuits",
  items: ["circuits.identification", "circuits.protection", "boards.connections"],
  facts: {
    mix: oneKind({
      asks: "How are circuits mixed?",
      effort: "measured",
      values: {
        none: "every device feeds one circuit, and every circuit is dead once its own device is off",
        "fed-twice": "a circuit stays live after its own device is off, because another feeds it",
        doubled: "two circuits are connected to one device",
      },
    }),
    switching: ranked({
      asks: "Where a circuit is fed twice: how are the two devices switched?",
      effort: "glance",
      values: {
        together: "the two devices are linked and open together",
        "apart-warned": "the two devices open apart, and a lasting notice at both says so",
        apart: "the two devices open apart, and no notice says so",
      },
    }),
    "smallest-carries": yesNo({
      asks: "Can the smaller of the two cables carry the rated current of the shared device?",
      effort: "opened",
      yes: "the smaller cable carries the rated current of the device",
      no: "the smaller cable carries less than the rated current of the device",
      worse: "no",
      worked: {
        by: "cable-capacity",
        matter: "device-within-cable",
        met: "yes",
        notMet: "no",
        findings: "not-met-only",
      },
    }),
    terminal: ranked({
      asks: "Does the shared terminal hold both conductors?",
      effort: "opened",
      values: {
        holds: "the terminal holds what is in it firmly and is made to take it, or no terminal is shared",
        loose: "the terminal does not hold both conductors firmly, or is marked by heat",
      },
    }),
  },
  contested: {
    doubling: {
      question: "Two circuits on one device that protects both cables: is that anything to report?",
      positions: {
        improve: {
          words: "each circuit should have a device of its own",
          because: "314.1 and 314.4 divide an installation so that one fault does not take both",
        },
        nothing: {
          words: "what one device protects is one circuit with branches",
          because: "that is how a circuit is defined, and both cables are protected",
        },
      },
    },
  },
  paths: [
    {
      id: "not-dead",
      hazard: "contact-with-live-parts",
      route: "one device is switched off for work and the other keeps the conductors live",
      exists: all(is("mix", "fed-twice"), is("switching", "apart-warned", "apart")),
      layers: [
        oneEventAway("closed", "barrier-or-enclosure", "enclosures that stay closed until somebody works inside", [
          "416.2.4",
        ]),
        {
          id: "isolation",
          provision: "isolation",
          words: "one device that makes the circuit dead",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["314.4", "462.2"],
        },
        {
          id: "warned",
          provision: "information",
          words: "a lasting notice at both devices",
          gone: is("switching", "apart"),
          sound: NEVER,
          regulations: ["514.11.1"],
        },
      ],
    },
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "the smaller cable carries more than it is able to",
      exists: all(is("mix", "doubled"), no("smallest-carries")),
      layers: [
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "a device that protects the smaller cable",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["433.1.1"],
        },
        oneEventAway("load", "thermal-protection", "a load that is seldom so high"),
      ],
    },
    {
      id: "hot-terminal",
      hazard: "burns-or-fire",
      route: "a conductor works loose in the shared terminal and heats",
      exists: all(is("mix", "doubled"), is("terminal", "loose")),
      layers: [
        {
          id: "connection",
          provision: "thermal-protection",
          words: "a terminal that holds both conductors",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["526.1", "526.2"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure of the board", ["526.5"]),
      ],
    },
  ],
  departures: [
    {
      when: all(is("mix", "fed-twice"), is("switching", "apart-warned", "apart")),
      words: "a circuit is fed from two devices that do not open together",
      regulations: ["314.4"],
    },
    {
      when: all(
        is("mix", "doubled"),
        any(held("doubling", "improve"), no("smallest-carries"), is("terminal", "loose")),
      ),
      words: "two circuits share one device",
      regulations: ["314.1", "314.4"],
    },
  ],
  dangers: [
    {
      id: "hot-terminal",
      least: "C2",
      when: is("terminal", "loose"),
      words: "a terminal is loose or marked by heat",
      regulations: ["526.1"],
    },
  ],
  client: {
    C2: [
      says(
        "A circuit is fed from two places in the fuse box, and a wire there is loose or has been hot. It could give a shock or burn. Have this put right soon.",
        all(is("mix", "fed-twice"), is("switching", "apart-warned", "apart"), is("terminal", "loose")),
      ),
      says(
        "A circuit is fed from two places in the fuse box. With one turned off, its wires can still give a shock. Have this put right soon.",
        all(is("mix", "fed-twice"), is("switching", "apart-warned", "apart")),
      ),
      says(
        "Two circuits share one fuse, and a wire there is loose or has been hot. It could burn. Have them parted soon.",
        all(is("mix", "doubled"), is("terminal", "loose")),
      ),
      says(
        "A wire in the fuse box is loose or has been hot. It could burn. Have it put right soon.",
        is("terminal", "loose"),
      ),
      says("Two circuits share one fuse. A wire could get too hot. Have them parted soon.", is("mix", "doubled")),
    ],
    C3: "Wires of two circuits are mixed in the fuse box. It is not a danger now. Parting them would be better.",
    FI: [
      unsure(
        "Wires may be mixed in the fuse box. We could not find out. Some could stay live when off. This must be looked at.",
        ["mix"],
      ),
      unsure(
        "Wires of two circuits are mixed in the fuse box. We could not find out if that is safe. This must be looked at.",
        ["switching", "smallest-carries", "terminal"],
        is("mix", "fed-twice", "doubled"),
      ),
      unsure("We could not find out if a wire in the fuse box is loose or has been hot. This must be looked at.", [
        "terminal",
      ]),
    ],
    none: "Each circuit is joined to its own fuse, or the mix does no harm.",
  },
  remedies: [
    { words: "Link the two devices, so that they open together.", changes: { switching: "together" } },
    {
      words: "Fit a device that the smaller cable can carry, and make the terminal firm.",
      changes: { "smallest-carries": "yes", terminal: "holds" },
    },
    {
      words: "Give each circuit a device of its own, with sound terminals, and part what is joined.",
      changes: { mix: "none", terminal: "holds" },
    },
  ],
  examples: [
    {
      name: "a light stays on after its breaker is off",
      facts: { mix: "fed-twice", switching: "apart" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; regulation 314.4",
    },
    {
      name: "the same with a notice at both devices",
      facts: { mix: "fed-twice", switching: "apart-warned", terminal: "holds" },
      possible: ["C3"],
      source: "trade practice: whoever isolates is told",
    },
    {
      name: "two socket radials in one breaker, both cables protected",
      facts: { mix: "doubled", "smallest-carries": true, terminal: "holds" },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion; regulation 314.4",
    },
    {
      name: "the same held to be one circuit",
      facts: { mix: "doubled", "smallest-carries": true, terminal: "holds" },
      positions: { doubling: "nothing" },
      possible: ["none"],
      source: "trade discussion of doubled circuits",
    },
    {
      name: "lighting cable of 1 mm² with a ring on 32 A",
      facts: { mix: "doubled", "smallest-carries": false, terminal: "holds" },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 433.1.1",
    },
    {
      name: "board could not be made dead to look",
      facts: {
        switching: "apart",
        terminal: "holds",
        "smallest-carries": true,
        mix: { notKnown: "limited", reason: "supply could not be switched off" },
      },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over the feeds",
    },
    {
      name: "terminal not checked",
      facts: { mix: "doubled", "smallest-carries": true },
      possible: ["C3", "C2"],
      missing: ["terminal"],
      source: "union over the terminal",
    },
  ],
});
