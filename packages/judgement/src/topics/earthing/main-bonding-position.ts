import { ALWAYS, all, any, held, is, NEVER, no, oneKind, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A main bond that is made, but in the wrong place or in a way that does not last. */
export const mainBondingPosition = topic({
  id: "main-bonding-position",
  title: "Main bonding made in the wrong place or way",
  group: "earthing",
  items: ["earthing.main-bonding", "earthing.bonding-connections"],
  facts: {
    place: oneKind({
      asks: "Where along the pipe is the bond made?",
      effort: "glance",
      values: {
        "at-entry": "it is made where the pipe comes in, before any branch, and within 600 mm of a meter",
        "further-in": "it is made further in, and metal without a break joins it to where the pipe comes in",
        "wrong-side":
          "an insulating section, a plastic stretch or a meter without metal path lies between it and the ground",
      },
    }),
    "earthy-side": yesNo({
      asks: "Is metal in contact with the ground left unbonded by that, and in reach?",
      effort: "measured",
      yes: "metal in contact with the ground is in reach and not bonded",
      no: "what is left unbonded is not in contact with the ground, or not in reach",
      worse: "yes",
    }),
    clamp: ranked({
      asks: "How is it clamped on?",
      effort: "glance",
      values: {
        proper: "a clamp made for it sits tight on clean metal",
        unsuited: "the clamp is of the wrong kind for the place or metal, and is tight",
        loose: "the clamp is loose, or sits on paint or corrosion",
      },
    }),
    unbroken: yesNo({
      asks: "Where one conductor serves several pipes, does it go through each clamp without being cut?",
      effort: "glance",
      yes: "the conductor goes through uncut, or serves one pipe only",
      no: "the conductor is cut at a clamp, so that taking that clamp off parts it from the next pipe",
      worse: "no",
    }),
  },
  contested: {
    "cut-at-clamp": {
      question: "Is a bonding conductor cut at an intermediate clamp worth an observation?",
      positions: {
        improvement: {
          words: "it is to be improved",
          because: "taking one clamp off for work on a pipe takes the bond off the next",
        },
        nothing: {
          words: "it is not, while every joint is tight",
          because: "544.1 asks that the pipe be bonded, and it is",
        },
      },
    },
  },
  paths: [
    {
      id: "two-potentials",
      hazard: "shock-under-fault",
      route: "the pipe is not held at the potential of earthed metal in a fault, and somebody touches both",
      exists: ALWAYS,
      layers: [
        oneEventAway("no-fault", "fault-protection", "freedom from faults and a short disconnection time", ["411.3.2"]),
        {
          id: "bond",
          provision: "equipotential-bonding",
          words: "a bond on the part that brings in earth potential",
          gone: any(is("clamp", "loose"), all(is("place", "wrong-side"), is("earthy-side", "yes"))),
          sound: NEVER,
          regulations: ["411.3.1.2", "544.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("place", "further-in"), all(is("place", "wrong-side"), is("earthy-side", "yes"))),
      words: "the bond is not made where the pipe comes in",
      regulations: ["544.1.2"],
    },
    {
      when: is("clamp", "unsuited", "loose"),
      words: "the connection is not of a lasting kind",
      regulations: ["526.1", "544.1.2"],
    },
    {
      when: all(no("unbroken"), held("cut-at-clamp", "improvement")),
      words: "the bond of one pipe depends on the clamp of another",
      regulations: ["526.1", "544.1.2"],
    },
  ],
  client: {
    C2: "The earth link to a pipe does not do its job. In a fault you could get a shock from the pipe. Have it put right soon.",
    C3: "The earth link to a pipe works. It should be made in a better way.",
    FI: unsure("We could not find out if the earth link to a pipe does its job. This must be looked at.", [
      "place",
      "earthy-side",
      "clamp",
    ]),
    none: "The earth link to this pipe does its job.",
  },
  remedies: [
    { words: "Clean the metal, fit a clamp made for it, and measure.", changes: { clamp: "proper" } },
    { words: "Join the cut ends by a lasting joint, or run a conductor to each pipe.", changes: { unbroken: "yes" } },
    {
      words: "Make the bond anew where the pipe comes in.",
      changes: { place: "at-entry" },
    },
  ],
  examples: [
    {
      name: "gas bonded at the boiler, metal all the way",
      facts: { place: "further-in", clamp: "proper", unbroken: true },
      possible: ["C3"],
      classification: "C3",
      source: "regulation 544.1.2",
    },
    {
      name: "bond after the plastic stretch, metal riser from the ground in reach",
      facts: { place: "wrong-side", "earthy-side": true, clamp: "proper", unbroken: true },
      possible: ["C2"],
      source: "regulation 411.3.1.2",
    },
    {
      name: "bond after a plastic service, nothing earthy left",
      facts: { place: "wrong-side", "earthy-side": false, clamp: "proper", unbroken: true },
      possible: ["none"],
      source: "trade practice: nothing that needs a bond is without one",
    },
    {
      name: "one conductor cut at the gas clamp, water beyond",
      facts: { place: "at-entry", clamp: "proper", unbroken: false },
      possible: ["C3"],
      source: "trade discussion of looped bonding conductors",
    },
    {
      name: "the same where tight joints are held to be enough",
      facts: { place: "at-entry", clamp: "proper", unbroken: false },
      positions: { "cut-at-clamp": "nothing" },
      possible: ["none"],
      source: "trade discussion of looped bonding conductors",
    },
    {
      name: "loose clamp",
      facts: { place: "at-entry", clamp: "loose" },
      possible: ["C2"],
      source: "regulation 526.1",
    },
    {
      name: "contact with the ground not measured",
      facts: { place: "wrong-side", clamp: "proper", unbroken: true },
      possible: ["none", "C2"],
      missing: ["earthy-side"],
      source: "union over the measurement",
    },
  ],
});
