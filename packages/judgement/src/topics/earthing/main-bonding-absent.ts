import { all, is, NEVER, no, ranked, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A metal service or part of the building that brings in earth potential, and is not bonded. */
export const mainBondingAbsent = topic({
  id: "main-bonding-absent",
  title: "No main bonding to a metal service or structural part",
  group: "earthing",
  items: ["earthing.main-bonding"],
  facts: {
    bonded: yesNo({
      asks: "Is a main bonding conductor connected to the gas, water, oil or other pipe, or to the structural steel?",
      effort: "glance",
      yes: "a main bonding conductor is connected to it",
      no: "no main bonding conductor is connected to it",
      worse: "no",
    }),
    extraneous: ranked({
      asks: "How does it come into the building, and if measured with any bond off, what is its resistance to the main earthing terminal?",
      effort: "measured",
      values: {
        insulated: "it comes in in plastic, or has an insulating section where it comes in",
        "shown-isolated": "with any bond off it measures more than 22 kΩ to the main earthing terminal",
        "metal-entry": "metal comes in from the ground, and no measurement shows it to be isolated",
        "shown-earthy": "with any bond off it measures 22 kΩ or less to the main earthing terminal",
      },
    }),
    "other-path": ranked({
      asks: "Is it joined to the main earthing terminal in some other way?",
      effort: "measured",
      values: {
        lasting: "metal joints and the bond of another service join it to the terminal, at 0.05 Ω or less",
        chance: "only circuit protective conductors of appliances happen to join it to the terminal",
        none: "nothing else joins it to the terminal",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "two-potentials",
      hazard: "shock-under-fault",
      route:
        "a fault or a broken supply neutral lifts earthed metal, and somebody touches it and the unbonded part together",
      exists: is("extraneous", "metal-entry", "shown-earthy"),
      layers: [
        oneEventAway("no-fault", "fault-protection", "freedom from faults and a short disconnection time", ["411.3.2"]),
        {
          id: "bond",
          provision: "equipotential-bonding",
          words: "main bonding, which keeps both parts at about one potential",
          gone: all(no("bonded"), is("other-path", "chance", "none")),
          sound: NEVER,
          regulations: ["411.3.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("bonded"), is("extraneous", "metal-entry", "shown-earthy")),
      words: "an extraneous-conductive-part has no main bonding conductor of its own near where it comes in",
      regulations: ["411.3.1.2", "544.1.2"],
    },
  ],
  client: {
    C2: "A metal pipe or part has no safety link to earth. In a fault you could get a shock from it. Have the link put in soon.",
    C3: "A metal pipe has no safety link of its own. It is linked in another way. A link of its own is better.",
    FI: "We could not find out if a metal pipe needs a safety link to earth. This must be looked at soon.",
    none: "This pipe or part is linked to earth, or does not need to be.",
  },
  remedies: [
    {
      words:
        "Run a main bonding conductor of the right size to the part, before any branch and within 600 mm of the meter where practicable.",
      changes: { bonded: "yes" },
    },
    {
      words:
        "Have the supplier of the service bring it in in plastic, and show by measurement that what is left is isolated.",
      changes: { extraneous: "insulated" },
    },
  ],
  examples: [
    {
      name: "gas pipe, 4.2 kΩ to the terminal, no bond",
      facts: { bonded: false, extraneous: "shown-earthy", "other-path": "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: extraneous part without main bonding",
    },
    {
      name: "metal water pipe, no bond",
      facts: { bonded: false, extraneous: "metal-entry", "other-path": "chance" },
      possible: ["C2"],
      source: "regulation 411.3.1.2",
    },
    {
      name: "plastic service",
      facts: { bonded: false, extraneous: "insulated" },
      possible: ["none"],
      source: "regulation 411.3.1.2: an insulating section at the entry needs no bond",
    },
    {
      name: "water pipe joined to the bonded gas pipe at the boiler",
      facts: { bonded: false, extraneous: "metal-entry", "other-path": "lasting" },
      possible: ["C3"],
      source: "trade discussion: one bond for two services",
    },
    {
      name: "entry not found",
      facts: {
        bonded: false,
        "other-path": "none",
        extraneous: { notKnown: "limited", reason: "the entry is behind fitted furniture" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over how the pipe comes in",
    },
    {
      name: "only the missing bond is known",
      facts: { bonded: false },
      possible: ["none", "C3", "C2"],
      missing: ["extraneous", "other-path"],
      source: "union over what is not known",
    },
  ],
});
