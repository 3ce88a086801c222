import { ALWAYS, all, amount, any, below, held, NEVER, no, not, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A main bonding conductor that is there and smaller than the tables ask for. */
export const mainBondingUndersized = topic({
  id: "main-bonding-undersized",
  title: "Main bonding conductor too small",
  group: "earthing",
  items: ["earthing.main-bonding"],
  facts: {
    "table-size": yesNo({
      asks: "Has the bonding conductor the size that its system of earthing asks for?",
      effort: "glance",
      yes: "the bonding conductor has the size asked for",
      no: "the bonding conductor is smaller than the size asked for",
      worse: "no",
      worked: { by: "bonding-size", met: "yes", notMet: "no" },
    }),
    size: amount({
      asks: "What is its cross-section in copper, or its copper equivalent?",
      effort: "opened",
      name: "cross-section of the bonding conductor",
      unit: "square-millimetre",
      worse: "lower",
    }),
    pme: yesNo({
      asks: "Is the supply PME?",
      effort: "glance",
      yes: "the supply is PME",
      no: "the supply is not PME",
      worse: "yes",
    }),
    "heat-damage": yesNo({
      asks: "Does the bonding conductor or its insulation show signs of having been hot?",
      effort: "glance",
      yes: "the bonding conductor shows signs of having been hot",
      no: "the bonding conductor shows no sign of having been hot",
      worse: "yes",
    }),
  },
  contested: {
    "small-bond": {
      question: "What is a bonding conductor of 6 mm² or more that is short of the table and has never been hot?",
      positions: {
        improvement: {
          words: "it is short of the edition and no more",
          because: "544.1.1 asks for more, but what is there holds the parts at about one potential in a fault",
        },
        nothing: {
          words: "it is not worth an observation",
          because: "it was the size of its day and has served for years without a sign of heat",
        },
        "danger-on-pme": {
          words: "on PME it is potentially dangerous",
          because: "with a broken supply neutral it may carry load current for hours, for which the table allows",
        },
      },
    },
  },
  paths: [
    {
      id: "two-potentials",
      hazard: "shock-under-fault",
      route: "the bond gives way in a fault, and somebody touches metal at two potentials",
      exists: ALWAYS,
      layers: [
        oneEventAway("no-fault", "fault-protection", "freedom from faults and a short disconnection time", ["411.3.2"]),
        {
          id: "bond",
          provision: "equipotential-bonding",
          words: "a bonding conductor that lasts through a fault",
          gone: all(
            no("table-size"),
            any(below("size", "6 mm²"), yes("heat-damage"), all(yes("pme"), held("small-bond", "danger-on-pme"))),
          ),
          sound: NEVER,
          regulations: ["411.3.1.2", "544.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("table-size"), not(held("small-bond", "nothing"))),
      words: "the main bonding conductor is smaller than its system of earthing asks for",
      regulations: ["544.1.1"],
    },
  ],
  dangers: [
    {
      id: "bond-hot",
      least: "C2",
      when: yes("heat-damage"),
      words: "the bond has carried enough current to be hot, as with a broken supply neutral or a fault that stays",
      regulations: ["411.3.1.2", "543.3.1", "544.1.1"],
    },
  ],
  client: {
    C2: "The earth link to a pipe is too thin or has been hot. It may fail, and you could get a shock. Have it changed soon.",
    C3: "The earth link to a pipe is thin by the rules of today. It still works. A thicker one is better.",
    FI: [
      unsure("We could not find out if the earth link to a pipe is thick enough. This must be looked at.", [
        "table-size",
        "size",
        "pme",
      ]),
      unsure("We could not see if the earth link to a pipe has been hot. This must be looked at.", ["heat-damage"]),
    ],
    none: says("The earth link to this pipe is thick enough.", yes("table-size")),
  },
  remedies: [
    {
      words: "Run a bonding conductor of the size of the table beside or in place of the old one.",
      changes: { "table-size": "yes" },
    },
    {
      words:
        "Where it has been hot, find the current that heated it, have the supply neutral proved, and replace the conductor.",
      changes: { "table-size": "yes", "heat-damage": "no" },
    },
  ],
  examples: [
    {
      name: "10 mm² as the table asks, browned and stiff",
      facts: { "table-size": true, size: "10 mm²", pme: true, "heat-damage": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a bond that has been hot has carried load or fault current",
    },
    {
      name: "6 mm² to gas and water on PME, no heat",
      facts: { "table-size": false, size: "6 mm²", pme: true, "heat-damage": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion of 6 mm² main bonding",
    },
    {
      name: "the same where long service is held to be enough",
      facts: { "table-size": false, size: "6 mm²", pme: true, "heat-damage": false },
      positions: { "small-bond": "nothing" },
      possible: ["none"],
      source: "trade discussion of 6 mm² main bonding",
    },
    {
      name: "the same where PME is held to make it dangerous",
      facts: { "table-size": false, size: "6 mm²", pme: true, "heat-damage": false },
      positions: { "small-bond": "danger-on-pme" },
      possible: ["C2"],
      source: "trade discussion of 6 mm² main bonding",
    },
    {
      name: "2.5 mm² to the gas pipe",
      facts: { "table-size": false, size: "2.5 mm²" },
      possible: ["C2"],
      source: "trade practice: far below the least size of 544.1.1",
    },
    {
      name: "6 mm² with browned insulation",
      facts: { "table-size": false, size: "6 mm²", "heat-damage": true },
      possible: ["C2"],
      source: "trade practice: signs of heat",
    },
    {
      name: "smaller than the table, size not read",
      facts: { "table-size": false, pme: false, "heat-damage": false },
      possible: ["C3", "C2"],
      missing: ["size"],
      source: "union over the size",
    },
  ],
});
