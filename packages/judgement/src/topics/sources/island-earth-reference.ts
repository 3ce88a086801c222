import { all, is, NEVER, no, oneKind, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A battery inverter that feeds circuits while the mains is off: whether protection still works on the island. */
export const islandEarthReference = topic({
  id: "island-earth-reference",
  title: "Backup supply: protection while the mains is off",
  group: "sources",
  items: ["sources.storage", "sources.generators"],
  facts: {
    island: yesNo({
      asks: "Does the inverter feed circuits or a socket while the mains is off?",
      effort: "opened",
      yes: "circuits are fed while the mains is off",
      no: "nothing is fed while the mains is off",
      worse: "yes",
    }),
    "neutral-link": ranked({
      asks: "Is the neutral joined to earth for the time of the island, and only then?",
      effort: "opened",
      values: {
        switched: "the neutral is joined to earth by a contact for the time of the island",
        fixed: "a fixed link joins neutral and earth all the time",
        absent: "nothing joins neutral and earth during the island",
      },
    }),
    earth: oneKind({
      asks: "What earth is left when the mains is off?",
      effort: "opened",
      values: {
        electrode: "an electrode of the installation's own remains",
        "supply-only": "only the distributor's earth is there, which may be cut off with the mains",
      },
    }),
    "rcd-on-island": yesNo({
      asks: "Are the circuits of the island protected by a 30 mA RCD that works on it?",
      effort: "measured",
      yes: "a 30 mA RCD protects the island and was tried on it",
      no: "no RCD works on the island",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "island-fault",
      hazard: "shock-under-fault",
      route: "a fault while the island is fed is not disconnected",
      exists: yes("island"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "disconnection on the island",
          gone: all(is("neutral-link", "absent"), yes("island")),
          sound: NEVER,
          regulations: ["551.4.3.2.1", "411.3.2"],
        },
      ],
    },
    {
      id: "no-rcd-on-island",
      hazard: "contact-with-live-parts",
      route: "somebody touches a live part while the island feeds, with nothing that sees it",
      exists: all(yes("island"), no("rcd-on-island"), is("earth", "supply-only")),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD that works on the island",
          gone: no("rcd-on-island"),
          sound: NEVER,
          regulations: ["551.4.4.2", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("island"), is("neutral-link", "fixed", "absent")),
      words: "the neutral of the island is not joined to earth by a contact for that time alone",
      regulations: ["551.4.3.2.1", "411.4.2"],
    },
    {
      when: all(yes("island"), is("earth", "supply-only")),
      words: "the island has no electrode of its own and rests on the distributor's earth",
      regulations: ["551.4.3.2.1"],
    },
  ],
  client: {
    C2: [
      says(
        "When the mains is off, the backup supply is not safe. A fault would not be cut off. Have it put right soon.",
        is("neutral-link", "absent"),
      ),
      says(
        "When the mains is off, no safety switch that works guards the backup supply. Someone could get a shock. Have it put right soon.",
        no("rcd-on-island"),
      ),
    ],
    C3: "The earthing of the backup supply is not as it should be today. It is not a danger now. Have it made better.",
    FI: unsure("We could not find out if the backup supply is safe when the mains is off. This must be looked at.", [
      "island",
      "neutral-link",
      "earth",
      "rcd-on-island",
    ]),
    none: "The backup supply is safe when the mains is off.",
  },
  remedies: [
    {
      words: "Have the supplier enable or fit the contact that joins neutral and earth for the island.",
      changes: { "neutral-link": "switched" },
    },
    {
      words: "Drive an electrode and protect the island by an RCD that is tried on it.",
      changes: { earth: "electrode", "rcd-on-island": "yes", "neutral-link": "switched" },
    },
  ],
  examples: [
    {
      name: "backup socket with a floating supply",
      facts: { island: true, "neutral-link": "absent", earth: "electrode", "rcd-on-island": false },
      possible: ["C2"],
      source: "551.4.3.2.1: protection must not depend on the mains being there",
    },
    {
      name: "contact, electrode and RCD",
      facts: { island: true, "neutral-link": "switched", earth: "electrode", "rcd-on-island": true },
      possible: ["none"],
      source: "551.4.3.2.1",
    },
    {
      name: "the link was not looked at",
      facts: { island: true, earth: "electrode", "rcd-on-island": true },
      possible: ["none", "C3", "C2"],
      missing: ["neutral-link"],
      source: "union over what may be there",
    },
  ],
});
