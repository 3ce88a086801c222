import { ALWAYS, all, is, NEVER, no, oneKind, ranked, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A circuit without marking of which nobody knows what it feeds. */
export const circuitUnidentified = topic({
  id: "circuit-unidentified",
  title: "Circuit not identified",
  group: "circuits",
  items: ["circuits.identification", "boards.labels"],
  facts: {
    label: yesNo({
      asks: "Does the marking at the device say what it feeds?",
      effort: "glance",
      yes: "the marking says what the device feeds",
      no: "the device has no marking, or one that says nothing",
      worse: "no",
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
  contested: {},
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
  ],
  departures: [
    {
      when: no("label"),
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
    C1: "A wire that nobody knew of can be live, and its end can be touched. It can kill. Keep it off until it is made safe.",
    C2: "A circuit ends in loose wires that nobody knew of. Somebody could touch a live wire. Have it put right soon.",
    C3: "A switch in the fuse box has no label. Have it marked.",
    FI: [
      unsure(
        "We could not find out what one switch in the fuse box feeds. It could end in a live wire. This must be looked at.",
        ["far-end"],
      ),
      unsure(
        "A circuit ends in loose wires. We could not find out if they can be live or touched. This must be looked at.",
        ["end-place", "service"],
        is("far-end", "loose"),
      ),
    ],
    none: "Every switch in the fuse box says what it feeds.",
  },
  remedies: [
    { words: "Mark the device once what it feeds is proved.", changes: { label: "yes" } },
    {
      words: "Disconnect the conductors at the board until their end is found.",
      changes: { service: "off" },
    },
    { words: "Trace the circuit and close in or remove its end.", changes: { "far-end": "found" } },
  ],
  examples: [
    {
      name: "a breaker without marking, traced to the hall lights",
      facts: { label: false, "far-end": "found", service: "on" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 514.8.1",
    },
    {
      name: "a breaker that feeds something nobody found",
      facts: {
        label: false,
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
      facts: { label: false, service: "on", "far-end": "loose", "end-place": "closed" },
      possible: ["C2"],
      source: "trade practice: only the ceiling stands between",
    },
    {
      name: "not traced yet",
      facts: { label: true, service: "on", "end-place": "closed" },
      possible: ["none", "C2"],
      missing: ["far-end"],
      source: "union over what is at the other end",
    },
  ],
});
