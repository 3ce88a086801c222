import { ALWAYS, all, held, is, NEVER, oneKind, ranked } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A circuit whose label is missing or wrong, or of which nobody knows what it feeds. */
export const circuitUnidentified = topic({
  id: "circuit-unidentified",
  title: "Circuit not identified",
  group: "circuits",
  items: ["circuits.identification", "boards.labels"],
  facts: {
    label: ranked({
      asks: "Does the marking at the device say what it feeds?",
      effort: "measured",
      values: {
        right: "the marking says what the device feeds",
        missing: "the device has no marking, or one that says nothing",
        wrong: "the marking names the wrong circuit",
      },
    }),
    "far-end": ranked({
      asks: "What is at the other end?",
      effort: "beyond",
      values: {
        found: "what it feeds was found and inspected",
        "made-safe": "it feeds nothing now, and its end is closed in",
        loose: "it ends in loose or bare conductors",
      },
    }),
    "end-place": ranked({
      asks: "Where is that end, or where could it be?",
      effort: "glance",
      values: {
        closed: "it can only be in a closed void or enclosure",
        reachable: "it is, or can be, within reach of people",
      },
    }),
    service: oneKind({
      asks: "Is its device on?",
      effort: "glance",
      values: {
        on: "the device is on, or anybody can put it on",
        off: "the conductors are disconnected from the device",
      },
    }),
  },
  contested: {
    "wrong-marking": {
      question: "Is a marking that names the wrong circuit potentially dangerous?",
      positions: {
        improve: {
          words: "a wrong marking is to be put right",
          because: "nobody may work without proving dead, whatever the marking says",
        },
        danger: {
          words: "a wrong marking sends people to live conductors",
          because: "householders trust the marking and prove nothing",
        },
      },
    },
  },
  paths: [
    {
      id: "loose-end",
      hazard: "contact-with-live-parts",
      route: "somebody touches the loose end of a circuit that nobody knew was live",
      exists: all(is("service", "on"), is("far-end", "loose")),
      layers: [
        {
          id: "end",
          provision: "insulation",
          words: "a terminated and insulated end",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "place",
          provision: "barrier-or-enclosure",
          words: "a void or enclosure around it",
          gone: is("end-place", "reachable"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
    {
      id: "wrong-one-off",
      hazard: "contact-with-live-parts",
      route: "somebody trusts the marking, switches the wrong device off and works on live conductors",
      exists: all(is("service", "on"), is("label", "wrong"), held("wrong-marking", "danger")),
      layers: [
        oneEventAway("closed", "barrier-or-enclosure", "enclosures that stay closed until somebody works inside", [
          "416.2.4",
        ]),
        {
          id: "marking",
          provision: "information",
          words: "a marking that is right",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["514.1.1", "514.8.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("label", "missing", "wrong"),
      words: "a device is not marked with the circuit that it protects",
      regulations: ["514.8.1"],
    },
    {
      when: all(is("service", "on"), is("far-end", "loose")),
      words: "a circuit ends in loose conductors",
      regulations: ["526.5"],
    },
  ],
  client: {
    C1: "A wire that nobody knew of is live, and its end can be touched. It can kill. Keep it off until it is made safe.",
    C2: "A circuit ends in loose wires, or its label is wrong. Somebody could touch a live wire. Have it put right soon.",
    C3: "A switch in the fuse box has no label, or a wrong one. Have it marked.",
    FI: "We could not find out what one switch in the fuse box feeds. It could end in a live wire. This must be looked at.",
    none: "Every switch in the fuse box says what it feeds.",
  },
  remedies: [
    { words: "Mark the device once what it feeds is proved.", changes: { label: "right" } },
    {
      words: "Disconnect the conductors at the board until their end is found.",
      changes: { service: "off" },
    },
    { words: "Trace the circuit and close in or remove its end.", changes: { "far-end": "found" } },
  ],
  examples: [
    {
      name: "a breaker without marking, traced to the hall lights",
      facts: { label: "missing", "far-end": "found", service: "on" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 514.8.1",
    },
    {
      name: "marking names the wrong circuit",
      facts: { label: "wrong", "far-end": "found", service: "on" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "marking names the wrong circuit, held to be a danger",
      facts: { label: "wrong", "far-end": "found", service: "on" },
      positions: { "wrong-marking": "danger" },
      possible: ["C2"],
      source: "trade discussion of wrong markings",
    },
    {
      name: "a breaker that feeds something nobody found",
      facts: {
        label: "missing",
        service: "on",
        "end-place": "reachable",
        "far-end": { notKnown: "limited", reason: "no more than a breaker's search was agreed" },
      },
      possible: ["C3", "C1"],
      classification: "FI",
      source: "union over what is at the other end",
    },
    {
      name: "loose end found in a ceiling void",
      facts: { label: "missing", service: "on", "far-end": "loose", "end-place": "closed" },
      possible: ["C2"],
      source: "trade practice: only the ceiling stands between",
    },
    {
      name: "not traced yet",
      facts: { label: "right", service: "on", "end-place": "closed" },
      possible: ["none", "C2"],
      missing: ["far-end"],
      source: "union over what is at the other end",
    },
  ],
});
