import { ALWAYS, all, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A bonding conductor that reads higher than its length explains. */
export const mainBondingResistance = topic({
  id: "main-bonding-resistance",
  title: "Main bonding conductor reads too high",
  group: "earthing",
  items: ["earthing.main-bonding", "earthing.bonding-connections"],
  facts: {
    "reading-fits": yesNo({
      asks: "Does the bonding conductor read what its length and size give, with 0.05 Ω for the connections?",
      effort: "measured",
      yes: "the bonding conductor reads what its length and size give",
      no: "the bonding conductor reads more than its length and size give",
      worse: "no",
      worked: { by: "bonding-continuity", met: "yes", notMet: "no" },
    }),
    "over-5-hundredths": yesNo({
      asks: "Is the reading more than 0.05 Ω?",
      effort: "measured",
      yes: "the reading is more than 0.05 Ω",
      no: "the reading is 0.05 Ω or less",
      worse: "yes",
    }),
    cause: ranked({
      asks: "Where does the resistance come from?",
      effort: "opened",
      values: {
        run: "the run is longer or smaller than it was taken to be, and connections are clean and tight",
        connection: "a connection is loose, painted over or corroded",
        conductor: "the conductor is cut, or broken in part",
      },
    }),
  },
  contested: {
    "flat-figure": {
      question: "Is 0.05 Ω a limit for a whole bonding conductor?",
      positions: {
        "for-the-joint": {
          words: "0.05 Ω is what connections may add, and a long conductor reads more",
          because: "25 m of 10 mm² copper alone read 0.046 Ω, and no regulation gives a flat figure",
        },
        "for-the-whole": {
          words: "a reading above 0.05 Ω is worth an observation",
          because: "a flat figure is simple and was the usual yardstick for many years",
        },
      },
    },
  },
  paths: [
    {
      id: "two-potentials",
      hazard: "shock-under-fault",
      route: "the bond does not hold the pipe at the potential of earthed metal, and somebody touches both",
      exists: ALWAYS,
      layers: [
        oneEventAway("no-fault", "fault-protection", "freedom from faults and a short disconnection time", ["411.3.2"]),
        {
          id: "bond",
          provision: "equipotential-bonding",
          words: "a bonding conductor whole from terminal to clamp",
          gone: all(no("reading-fits"), is("cause", "connection", "conductor")),
          sound: NEVER,
          regulations: ["411.3.1.2", "526.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("over-5-hundredths", "yes"), held("flat-figure", "for-the-whole")),
      words: "the bonding conductor reads more than the usual yardstick",
      regulations: ["411.3.1.2", "643.2.1"],
    },
    {
      when: is("cause", "connection", "conductor"),
      words: "a connection or the conductor itself is not sound",
      regulations: ["526.1", "543.3.1"],
    },
  ],
  dangers: [
    {
      id: "conductor-cut",
      least: "C2",
      when: is("cause", "conductor"),
      words: "the bonding conductor is cut or broken in part",
      regulations: ["411.3.1.2", "543.3.1"],
    },
  ],
  client: {
    C2: "The earth link to a pipe is cut, loose or makes bad contact. In a fault you could get a shock. Have it put right soon.",
    C3: "The earth link to a pipe is not as good as it could be. It works today.",
    FI: [
      unsure(
        "The earth link to a pipe gave a poor test. We could not find out why. This must be looked at.",
        ["cause"],
        no("reading-fits"),
      ),
      unsure(
        "We could not see if the earth link to a pipe is whole all the way. This must be looked at.",
        ["cause"],
        yes("reading-fits"),
      ),
      unsure("We could not test the earth link to a pipe well. It must be tested.", ["reading-fits", "cause"]),
    ],
    none: "The earth link to this pipe works as it should.",
  },
  remedies: [
    {
      words: "Take the clamp off, clean pipe and clamp to bright metal, tighten and measure again.",
      changes: { "reading-fits": "yes", cause: "run" },
    },
    {
      words: "Replace the conductor, at the size of the table and by the shortest way.",
      changes: { "reading-fits": "yes", "over-5-hundredths": "no", cause: "run" },
    },
  ],
  examples: [
    {
      name: "clamp on paint, 1.8 Ω",
      facts: { "reading-fits": false, "over-5-hundredths": true, cause: "connection" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: the bond makes no sure contact",
    },
    {
      name: "35 m of 10 mm², 0.07 Ω",
      facts: { "reading-fits": true, "over-5-hundredths": true, cause: "run" },
      possible: ["none"],
      source: "arithmetic: 35 m × 1.83 mΩ/m = 0.064 Ω",
    },
    {
      name: "the same by the flat figure",
      facts: { cause: "run", "reading-fits": true, "over-5-hundredths": true },
      positions: { "flat-figure": "for-the-whole" },
      possible: ["C3"],
      source: "trade discussion of 0.05 Ω",
    },
    {
      name: "0.9 Ω, run closed in, cause not to be found today",
      facts: {
        "reading-fits": false,
        "over-5-hundredths": true,
        cause: { notKnown: "limited", reason: "the run is behind a finished ceiling" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the cause",
    },
    {
      name: "high, cause not looked for yet",
      facts: { "reading-fits": false },
      possible: ["none", "C2"],
      missing: ["cause"],
      source: "union over the cause",
    },
  ],
});
