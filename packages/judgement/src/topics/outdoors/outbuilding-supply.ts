import { is, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The supply of a shed, garage or other outbuilding: its earth, how it is fed and how it is cut off. */
export const outbuildingSupply = topic({
  id: "outbuilding-supply",
  title: "Supply to an outbuilding",
  group: "outdoors",
  items: ["outdoors.outbuildings", "earthing.main-bonding"],
  facts: {
    earth: ranked({
      asks: "What earth does the outbuilding have?",
      effort: "measured",
      values: {
        sound: "it has an earth that works: a protective conductor from the house, or an electrode with an RCD",
        "class-2-only": "it has no earth, and everything in it is class II and fixed",
        none: "it has no earth, and class I equipment or a socket-outlet is in use there",
      },
    }),
    metal: ranked({
      asks: "Is there metal in it that brings in an earth: water or gas pipe, steel frame in the ground?",
      effort: "measured",
      values: {
        none: "nothing in it brings in an earth",
        bonded: "metal that brings in an earth is bonded",
        unbonded: "metal that brings in an earth is not bonded",
      },
    }),
    feed: ranked({
      asks: "How is it fed?",
      effort: "glance",
      values: {
        fixed: "a fixed cable suited to the run feeds it",
        lead: "a flexible lead from a plug in the house feeds it",
      },
    }),
    isolation: yesNo({
      asks: "Can the outbuilding be cut off by a switch in it or one plainly marked for it?",
      effort: "glance",
      yes: "a switch cuts the outbuilding off",
      no: "no marked switch cuts the outbuilding off",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "live-metal",
      hazard: "shock-under-fault",
      route: "metal of equipment becomes live through a fault and stays live",
      exists: is("earth", "none"),
      layers: [oneEventAway("basic", "insulation", "the insulation of the equipment", ["416.1", "411.3.1.1"])],
    },
    {
      id: "voltage-between-metal",
      hazard: "shock-under-fault",
      route: "a fault puts a voltage between the earth brought from the house and metal that stands in the ground",
      exists: is("metal", "unbonded"),
      layers: [oneEventAway("no-fault", "insulation", "insulation without a fault anywhere", ["411.3.1.2", "544.1.1"])],
    },
    {
      id: "lead-is-damaged",
      hazard: "contact-with-live-parts",
      route: "the lead wears or is trodden on or overloaded, and somebody touches a core",
      exists: is("feed", "lead"),
      layers: [oneEventAway("lead", "insulation", "the sheath of the lead", ["522.8.1", "416.1"])],
    },
  ],
  departures: [
    {
      when: is("earth", "class-2-only", "none"),
      words: "the outbuilding has no earth",
      regulations: ["411.3.1.1"],
    },
    { when: no("isolation"), words: "the outbuilding cannot be cut off", regulations: ["462.1", "462.2"] },
  ],
  client: {
    C2: "The supply to the shed or garage is not safe enough. A fault there could give a shock. Have it put right soon.",
    C3: "The supply to the shed or garage lacks a switch or an earth. It is not a danger now. It should be made better.",
    FI: unsure("We could not find out if the shed or garage has a safe supply. This must be looked at soon.", [
      "earth",
      "metal",
      "feed",
    ]),
    none: "The shed or garage has a safe supply.",
  },
  remedies: [
    { words: "Bond the metal that brings in an earth.", changes: { metal: "bonded" } },
    { words: "Fit a marked isolator.", changes: { isolation: "yes" } },
    {
      words: "Run a fixed cable with a protective conductor, or give the outbuilding an electrode and an RCD.",
      changes: { earth: "sound", feed: "fixed" },
    },
  ],
  examples: [
    {
      name: "garage with steel water pipe, earth from the house, no bonding",
      facts: { earth: "sound", metal: "unbonded", feed: "fixed", isolation: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: main bonding absent",
    },
    {
      name: "shed with socket-outlets on two-core cable",
      facts: { earth: "none", metal: "none", feed: "fixed", isolation: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "shed with one class II light on two-core cable",
      facts: { earth: "class-2-only", metal: "none", feed: "fixed", isolation: true },
      possible: ["C3"],
      source: "trade practice: nothing that wants an earth",
    },
    {
      name: "fed by an extension lead through a window",
      facts: { earth: "sound", metal: "none", feed: "lead", isolation: true },
      possible: ["C2"],
      source: "trade practice: a lead in place of fixed wiring",
    },
    {
      name: "no switch",
      facts: { earth: "sound", metal: "none", feed: "fixed", isolation: false },
      possible: ["C3"],
      source: "trade practice: cut off only with the house",
    },
    {
      name: "pipe not tested",
      facts: { earth: "sound", feed: "fixed", isolation: true },
      possible: ["none", "C2"],
      missing: ["metal"],
      source: "union over the test",
    },
  ],
});
