import { ALWAYS, all, any, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Green or sticky matter that comes out of old PVC cable at its ends. */
export const pvcExudation = topic({
  id: "pvc-exudation",
  title: "Green matter from old PVC cable",
  group: "cables",
  items: ["circuits.insulation", "accessories.connections"],
  facts: {
    seen: yesNo({
      asks: "Does green or sticky matter come out of cable ends?",
      effort: "opened",
      yes: "green or sticky matter comes out of cable ends",
      no: "nothing comes out of the cable ends",
      worse: "yes",
    }),
    reaches: ranked({
      asks: "How far does it go?",
      effort: "opened",
      values: {
        "on-cores": "it is on the cores only",
        contacts: "it has reached contacts or terminals",
        outside: "it runs out of the accessory, where people touch it or it stains the wall",
      },
    }),
    contacts: ranked({
      asks: "What are the contacts like?",
      effort: "opened",
      values: {
        clean: "the contacts are clean and firm",
        corroded: "contacts are corroded or marked by heat",
      },
    }),
    insulation: yesNo({
      asks: "Do the cores still insulate: supple, and a reading well above the limit?",
      effort: "measured",
      yes: "the cores are supple and their insulation reads well",
      no: "the cores are brittle or their insulation reads low",
      worse: "no",
      worked: { by: "insulation-resistance", notMet: "no" },
    }),
  },
  contested: {
    "matter-alone": {
      question: "Green matter on cores, contacts clean and good readings: is that anything to report?",
      positions: {
        improve: {
          words: "it is to be cleaned and watched",
          because: "it creeps on into contacts",
        },
        nothing: {
          words: "by itself it is nothing",
          because: "what comes out is plasticiser with copper in it, and the insulation still works",
        },
      },
    },
  },
  paths: [
    {
      id: "hot-contact",
      hazard: "burns-or-fire",
      route: "a fouled contact heats, or insulation that has dried out fails",
      exists: all(yes("seen"), any(is("contacts", "corroded"), no("insulation"))),
      layers: [
        {
          id: "contact",
          provision: "thermal-protection",
          words: "clean contacts and supple insulation",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["526.1", "416.1"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the accessory around it", ["526.5"]),
      ],
    },
  ],
  departures: [
    {
      when: all(
        yes("seen"),
        any(
          is("reaches", "contacts", "outside"),
          is("contacts", "corroded"),
          no("insulation"),
          held("matter-alone", "improve"),
        ),
      ),
      words: "PVC cable gives off matter that fouls accessories",
      regulations: ["134.1.1", "522.5.1"],
    },
  ],
  dangers: [
    {
      id: "contacts",
      least: "C2",
      when: is("contacts", "corroded"),
      words: "contacts are corroded or marked by heat",
      regulations: ["526.1", "134.1.1"],
    },
    {
      id: "insulation",
      least: "C2",
      when: no("insulation"),
      words: "the cores are brittle, or their insulation reads low",
      regulations: ["134.1.1", "651.2"],
    },
  ],
  client: {
    C2: "The joints or the cover of old wires are harmed. They could get hot or give a shock. Have them fixed soon.",
    C3: "Old cables give off a green matter. Do not touch it. Have it cleaned off and looked at again.",
    FI: [
      unsure(
        "Old cables give off a green matter. We could not see if it has harmed the joints. This must be looked at.",
        ["contacts", "insulation"],
        yes("seen"),
      ),
      unsure("We could not see if old cables give off a green matter that harms joints. This must be looked at.", [
        "seen",
      ]),
      unsure("We could not find out if the joints or the cover of old wires are harmed. This must be looked at.", [
        "contacts",
        "insulation",
      ]),
    ],
    none: "Nothing harmful comes out of the cables.",
  },
  remedies: [
    {
      words: "Clean the cores with gloves on and replace the fouled accessories.",
      changes: { reaches: "on-cores", contacts: "clean" },
    },
    {
      words: "Replace the cable, with the accessories that it has fouled.",
      changes: { seen: "no", contacts: "clean", insulation: "yes" },
    },
  ],
  examples: [
    {
      name: "runs down the wall below a socket, contacts clean",
      facts: { seen: true, reaches: "outside", contacts: "clean", insulation: true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "contacts corroded",
      facts: { seen: true, reaches: "contacts", contacts: "corroded", insulation: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: contacts that heat",
    },
    {
      name: "on the cores only, held to be nothing",
      facts: { seen: true, reaches: "on-cores", contacts: "clean", insulation: true },
      positions: { "matter-alone": "nothing" },
      possible: ["none"],
      source: "trade discussion of old PVC",
    },
    {
      name: "accessories not opened",
      facts: {
        seen: true,
        reaches: "outside",
        insulation: true,
        contacts: { notKnown: "limited", reason: "supply could not be switched off" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the contacts",
    },
    {
      name: "insulation not measured",
      facts: { seen: true, reaches: "on-cores", contacts: "clean" },
      possible: ["C3", "C2"],
      missing: ["insulation"],
      source: "union over the insulation",
    },
  ],
});
