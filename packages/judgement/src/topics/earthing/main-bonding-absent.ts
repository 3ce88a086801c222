import { all, is, NEVER, ranked, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A metal service or part of the building that brings in earth potential, and is not bonded. */
export const mainBondingAbsent = topic({
  id: "main-bonding-absent",
  title: "No main bonding to a metal service or structural part",
  group: "earthing",
  items: ["earthing.main-bonding"],
  facts: {
    bond: ranked({
      asks: "How is the gas, water, oil or other pipe, or the structural steel, joined to the main earthing terminal?",
      effort: "glance",
      values: {
        own: "a main bonding conductor of its own is connected to it",
        "through-another":
          "it has no bond of its own, but lasting metal joints and the bond of another service join it at 0.05 Ω or less",
        none: "it has no main bond, and at most the earths of appliances happen to join it to the terminal",
      },
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
      worked: { by: "part-isolated", met: "shown-isolated", notMet: "shown-earthy" },
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
          gone: is("bond", "none"),
          sound: NEVER,
          regulations: ["411.3.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("bond", "through-another", "none"), is("extraneous", "metal-entry", "shown-earthy")),
      words: "an extraneous-conductive-part has no main bonding conductor of its own near where it comes in",
      regulations: ["411.3.1.2", "544.1.2"],
    },
  ],
  client: {
    C2: "A metal pipe or part has no safety link to earth. In a fault you could get a shock from it. Have the link put in soon.",
    C3: "A metal pipe has no safety link of its own. It is linked in another way. A link of its own is better.",
    FI: [
      unsure("We could not find out if a metal pipe needs a safety link to earth. This must be looked at soon.", [
        "extraneous",
      ]),
      unsure("We could not find out if a metal pipe has its safety link to earth. This must be looked at soon.", [
        "bond",
      ]),
    ],
    none: "This pipe or part is linked to earth, or does not need to be.",
  },
  remedies: [
    {
      words:
        "Run a main bonding conductor of the right size to the part, before any branch and within 600 mm of the meter where practicable.",
      changes: { bond: "own" },
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
      facts: { bond: "none", extraneous: "shown-earthy" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: extraneous part without main bonding",
    },
    {
      name: "metal water pipe, no bond",
      facts: { bond: "none", extraneous: "metal-entry" },
      possible: ["C2"],
      source: "regulation 411.3.1.2",
    },
    {
      name: "plastic service",
      facts: { bond: "none", extraneous: "insulated" },
      possible: ["none"],
      source: "regulation 411.3.1.2: an insulating section at the entry needs no bond",
    },
    {
      name: "water pipe joined to the bonded gas pipe at the boiler",
      facts: { bond: "through-another", extraneous: "metal-entry" },
      possible: ["C3"],
      source: "trade discussion: one bond for two services",
    },
    {
      name: "entry not found",
      facts: {
        bond: "none",
        extraneous: { notKnown: "limited", reason: "the entry is behind fitted furniture" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over how the pipe comes in",
    },
    {
      name: "only the missing bond is known",
      facts: { bond: "none" },
      possible: ["none", "C2"],
      missing: ["extraneous"],
      source: "union over what is not known",
    },
  ],
});
