import { ALWAYS, all, any, held, is, NEVER, no, oneKind, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Aluminium or copper-clad conductors, and conductors of different size in one terminal. */
export const aluminiumOrMixedConductors = topic({
  id: "aluminium-or-mixed-conductors",
  title: "Conductors that do not suit their terminals",
  group: "cables",
  items: ["circuits.terminations", "circuits.capacity"],
  facts: {
    conductors: oneKind({
      asks: "What conductors are in the terminal?",
      effort: "opened",
      values: {
        copper: "copper conductors of one size are in the terminal",
        "mixed-sizes": "copper conductors of different sizes or kinds share a terminal",
        aluminium: "aluminium or copper-clad aluminium is in the terminal",
      },
    }),
    "terminal-suits": yesNo({
      asks: "Is the terminal made for them, by its marking or its maker's paper?",
      effort: "opened",
      yes: "the terminal is made for these conductors",
      no: "the terminal is not shown to be made for these conductors",
      worse: "no",
    }),
    connection: ranked({
      asks: "What is the connection like?",
      effort: "opened",
      values: {
        firm: "the connection is firm and unmarked",
        loose: "a conductor is loose, damaged or corroded",
        scorched: "the connection is marked by heat",
        burning: "the connection is overheating now",
      },
    }),
    "within-cable": yesNo({
      asks: "Does the smallest or weakest conductor carry the rated current of the device?",
      effort: "opened",
      yes: "the weakest conductor carries the rated current of the device",
      no: "the weakest conductor carries less than the rated current of the device",
      worse: "no",
      worked: {
        by: "cable-capacity",
        matter: "device-within-cable",
        met: "yes",
        notMet: "no",
        findings: "not-met-only",
      },
    }),
  },
  contested: {
    "firm-unsuited": {
      question: "Aluminium in a terminal made for copper, firm and unmarked: danger or improvement?",
      positions: {
        improve: {
          words: "while it is firm and cool it is to be improved",
          because: "nothing shows that it is failing",
        },
        danger: {
          words: "it will loosen, and nothing else stands before a fire",
          because: "aluminium creeps and corrodes under a screw made for copper, 526.2",
        },
      },
    },
  },
  paths: [
    {
      id: "hot-terminal",
      hazard: "burns-or-fire",
      route: "the connection loosens, heats and sets fire to what is around it",
      exists: any(
        is("connection", "loose", "scorched", "burning"),
        all(is("conductors", "mixed-sizes", "aluminium"), no("terminal-suits")),
      ),
      layers: [
        {
          id: "connection",
          provision: "thermal-protection",
          words: "a connection that stays firm",
          gone: any(
            is("connection", "loose", "scorched", "burning"),
            all(is("conductors", "aluminium"), no("terminal-suits"), held("firm-unsuited", "danger")),
          ),
          sound: NEVER,
          regulations: ["526.1", "526.2"],
        },
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the enclosure around it",
          gone: is("connection", "burning"),
          sound: NEVER,
          regulations: ["526.5"],
        },
      ],
    },
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "the weakest conductor carries more than it is able to",
      exists: no("within-cable"),
      layers: [
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "a device that protects the weakest conductor",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["433.2.1", "433.1.1"],
        },
        oneEventAway("load", "thermal-protection", "a load that is seldom so high"),
      ],
    },
  ],
  departures: [
    {
      when: all(is("conductors", "mixed-sizes", "aluminium"), no("terminal-suits")),
      words: "the terminal does not suit its conductors",
      regulations: ["526.2"],
    },
    {
      when: any(is("connection", "loose", "scorched", "burning"), no("within-cable")),
      words: "a connection or a conductor does not stand up to its use",
      regulations: ["526.1", "433.1.1"],
    },
  ],
  client: {
    C1: "A joint is so hot that it could start a fire now. The power to it must stay off until it is mended.",
    C2: [
      says(
        "A joint is loose, worn or has been hot. It could start a fire. Have it mended soon.",
        is("connection", "loose", "scorched", "burning"),
      ),
      says(
        "A wire is too thin for its fuse. It could get hot and start a fire. Have it put right soon.",
        no("within-cable"),
      ),
      says(
        "A joint is not made for its wires. It could work loose and get hot. Have it changed soon.",
        all(is("conductors", "aluminium"), no("terminal-suits")),
      ),
    ],
    C3: "A joint is not made for its wires. It is firm and cool now. A better joint would be safer.",
    FI: [
      unsure(
        "We could not see what wires are in a joint or how firm it is. It could get hot. This must be looked at.",
        ["conductors", "terminal-suits", "connection"],
      ),
      unsure("We could not find out if a wire is thick enough for its fuse. This must be looked at.", ["within-cable"]),
    ],
    none: "The joints suit their wires.",
  },
  remedies: [
    { words: "Remake the connection with the makers' torque.", changes: { connection: "firm" } },
    {
      words: "Change to terminals or connectors made for the conductors.",
      changes: { "terminal-suits": "yes", connection: "firm" },
    },
    {
      words: "Fit a device that the weakest conductor can carry.",
      changes: { "within-cable": "yes" },
    },
  ],
  examples: [
    {
      name: "aluminium under a copper terminal, firm",
      facts: { conductors: "aluminium", "terminal-suits": false, connection: "firm", "within-cable": true },
      possible: ["C3"],
      source: "trade practice; regulation 526.2",
    },
    {
      name: "the same held to be a danger",
      facts: { conductors: "aluminium", "terminal-suits": false, connection: "firm", "within-cable": true },
      positions: { "firm-unsuited": "danger" },
      possible: ["C2"],
      source: "trade discussion of aluminium",
    },
    {
      name: "one of two conductors pulls out of a terminal",
      facts: { conductors: "mixed-sizes", "terminal-suits": false, connection: "loose", "within-cable": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; regulation 526.1",
    },
    {
      name: "1 mm² joined into a 32 A circuit",
      facts: { conductors: "mixed-sizes", "terminal-suits": true, connection: "firm", "within-cable": false },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 433.2.1",
    },
    {
      name: "copper, firm",
      facts: { conductors: "copper", connection: "firm", "within-cable": true },
      possible: ["none"],
      source: "regulation 526.1",
    },
    {
      name: "terminal not opened",
      facts: {
        conductors: "aluminium",
        "terminal-suits": false,
        "within-cable": true,
        connection: { notKnown: "limited", reason: "sealed" },
      },
      possible: ["C3", "C2", "C1"],
      classification: "FI",
      source: "union over the connection",
    },
    {
      name: "size not compared",
      facts: { conductors: "copper", connection: "firm" },
      possible: ["none", "C2"],
      missing: ["within-cable"],
      source: "union over the size",
    },
  ],
});
