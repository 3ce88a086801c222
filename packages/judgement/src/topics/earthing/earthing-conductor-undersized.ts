import { ALWAYS, all, any, held, NEVER, no, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An earthing conductor smaller than the tables ask for, or than a fault at the origin allows. */
export const earthingConductorUndersized = topic({
  id: "earthing-conductor-undersized",
  title: "Earthing conductor too small",
  group: "earthing",
  items: ["earthing.conductor"],
  facts: {
    adiabatic: yesNo({
      asks: "By calculation, does the earthing conductor withstand an earth fault at the origin until the fuse clears it?",
      effort: "measured",
      yes: "by calculation it withstands an earth fault at the origin",
      no: "by calculation it does not withstand an earth fault at the origin",
      worse: "no",
      worked: { by: "earthing-conductor-adiabatic", met: "yes", notMet: "no" },
    }),
    "table-size": yesNo({
      asks: "Is it of the size that selection by the size of the tails gives?",
      effort: "glance",
      yes: "it has the size that selection by the tails gives",
      no: "it is smaller than selection by the tails gives",
      worse: "no",
      worked: { by: "earthing-conductor-size", matter: "earthing-conductor-size", met: "yes", notMet: "no" },
    }),
    "below-pme-size": yesNo({
      asks: "Is the supply PME, and the conductor smaller than a main bonding conductor has to be there?",
      effort: "glance",
      yes: "the supply is PME, and it is smaller than main bonding has to be there",
      no: "the supply is not PME, or it is as large as main bonding has to be",
      worse: "yes",
    }),
    "heat-damage": yesNo({
      asks: "Has the conductor or its insulation been hot?",
      effort: "glance",
      yes: "the conductor shows signs of having been hot",
      no: "the conductor shows no sign of having been hot",
      worse: "yes",
    }),
  },
  contested: {
    method: {
      question: "Is a calculation enough where the conductor is smaller than selection by the tails gives?",
      positions: {
        calculation: {
          words: "calculation and selection are two ways of which one is enough",
          because: "543.1.1 leaves the choice, and the calculated size is the one that physics asks for",
        },
        "selection-only": {
          words: "without the designer's calculation on paper the table is what counts",
          because: "fault level and clearing time of the network may change, and the table allows for that",
        },
      },
    },
    "pme-current": {
      question:
        "Is an earthing conductor below main bonding size on PME potentially dangerous where it withstands a fault?",
      positions: {
        improvement: {
          words: "it is short of the edition and no more, as long as nothing has been hot",
          because: "it takes a broken supply neutral and much load to overload it, and years of service show no heat",
        },
        danger: {
          words: "it is potentially dangerous on PME",
          because: "with a broken supply neutral the load current of this home and others flows in it for hours",
        },
      },
    },
  },
  paths: [
    {
      id: "burns-off",
      hazard: "shock-under-fault",
      route: "the conductor burns off in a fault, and metal stays live",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and earthed metal", ["416.1"]),
        {
          id: "conductor",
          provision: "fault-protection",
          words: "an earthing conductor that lasts until the fault is cleared",
          gone: any(no("adiabatic"), yes("heat-damage")),
          sound: NEVER,
          regulations: ["543.1.1", "543.1.3"],
        },
      ],
    },
    {
      id: "broken-neutral",
      hazard: "burns-or-fire",
      route: "the supply neutral breaks, and its current heats the earthing conductor",
      exists: all(yes("below-pme-size"), held("pme-current", "danger")),
      layers: [
        oneEventAway("network", "overcurrent-protection", "a supply neutral that is whole"),
        {
          id: "size",
          provision: "thermal-protection",
          words: "an earthing conductor that carries the neutral current of a broken supply",
          gone: yes("below-pme-size"),
          sound: NEVER,
          regulations: ["542.3.1", "544.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(no("adiabatic"), all(no("table-size"), held("method", "selection-only"))),
      words: "the earthing conductor is smaller than calculation or selection asks for",
      regulations: ["542.3.1", "543.1.1", "543.1.3"],
    },
    {
      when: yes("below-pme-size"),
      words: "the earthing conductor of a PME supply is smaller than main bonding has to be",
      regulations: ["542.3.1", "544.1.1"],
    },
  ],
  client: {
    C2: [
      says(
        "The main earth wire is too thin. It could burn off in a fault and leave metal live. Have it changed soon.",
        no("adiabatic"),
      ),
      says(
        "The main earth wire has been hot. It could burn off in a fault and leave metal live. Have it changed soon.",
        yes("heat-damage"),
      ),
      says(
        "The main earth wire is too thin for this kind of supply. It could burn off and leave metal live. Have it changed soon.",
        yes("below-pme-size"),
      ),
    ],
    C3: "The main earth wire is a bit thin by the rules of today. It will do for now. A thicker one is better.",
    FI: [
      unsure("We could not find out if the main earth wire is thick enough. This must be looked at.", [
        "adiabatic",
        "table-size",
        "below-pme-size",
      ]),
      unsure("We could not see if the main earth wire has been hot. This must be looked at.", ["heat-damage"]),
    ],
    none: "The main earth wire is thick enough.",
  },
  remedies: [
    {
      words: "Replace the earthing conductor by one of the size that the tables give.",
      changes: { adiabatic: "yes", "table-size": "yes", "below-pme-size": "no", "heat-damage": "no" },
    },
  ],
  examples: [
    {
      name: "10 mm² on PME, 25 mm² tails, 4.1 mm² needed by calculation",
      facts: { adiabatic: true, "table-size": false, "below-pme-size": false, "heat-damage": false },
      possible: ["none"],
      classification: "none",
      source: "arithmetic: adiabatic minimum 4.1 mm²",
    },
    {
      name: "the same where only the table is accepted",
      facts: { adiabatic: true, "table-size": false, "below-pme-size": false, "heat-damage": false },
      positions: { method: "selection-only" },
      possible: ["C3"],
      classification: "C3",
      source: "regulation Table 54.7: 16 mm² by selection",
    },
    {
      name: "4 mm², 2.3 kA for 0.25 s needs 8.0 mm²",
      facts: { adiabatic: false },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: √(2300² × 0.25) / 143 = 8.04 mm²",
    },
    {
      name: "6 mm² on PME, withstands the fault, no heat",
      facts: { adiabatic: true, "table-size": false, "below-pme-size": true, "heat-damage": false },
      possible: ["C3"],
      source: "trade discussion of undersized earthing conductors",
    },
    {
      name: "the same where PME size is held to be a matter of danger",
      facts: { adiabatic: true, "table-size": false, "below-pme-size": true, "heat-damage": false },
      positions: { "pme-current": "danger" },
      possible: ["C2"],
      source: "trade discussion of undersized earthing conductors",
    },
    {
      name: "not calculated, clearing time not known",
      facts: { "table-size": false, "below-pme-size": false, "heat-damage": false },
      possible: ["none", "C2"],
      missing: ["adiabatic"],
      source: "union over the calculation",
    },
  ],
});
