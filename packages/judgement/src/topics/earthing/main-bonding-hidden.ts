import { ALWAYS, all, any, held, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A main bonding connection that cannot be got at, or has no label. */
export const mainBondingHidden = topic({
  id: "main-bonding-hidden",
  title: "Main bonding connection hidden or without label",
  group: "earthing",
  items: ["earthing.bonding-connections", "earthing.main-bonding"],
  facts: {
    "clamp-reached": yesNo({
      asks: "Can the bonding clamp be reached for inspection and test?",
      effort: "opened",
      yes: "the bonding clamp can be reached",
      no: "the bonding clamp cannot be reached",
      worse: "no",
    }),
    label: yesNo({
      asks: "Is there a lasting label at the clamp that says what the connection is for?",
      effort: "glance",
      yes: "a lasting label is at the clamp",
      no: "no label is at the clamp, or none that can be read where the clamp is",
      worse: "no",
    }),
    continuous: yesNo({
      asks: "Is the resistance between the pipe and the main earthing terminal what a bonding conductor of that length gives?",
      effort: "measured",
      yes: "the resistance is what a bonding conductor of that length gives",
      no: "the resistance is higher than a bonding conductor of that length gives",
      worse: "no",
      worked: { by: "bonding-continuity", met: "yes", notMet: "no" },
    }),
    "joined-by": ranked({
      asks: "Opened up, what joins the pipe to the terminal?",
      effort: "beyond",
      values: {
        bond: "opened up, the bonding conductor itself ends at the pipe",
        chance: "opened up, only other metal joins the pipe to the terminal",
      },
    }),
  },
  contested: {
    "reading-for-clamp": {
      question: "Does a good reading stand in for a clamp that nobody can see?",
      positions: {
        accepted: {
          words: "a reading as low as the length of the conductor gives shows the bond",
          because: "the path is proved today, and what is missing is only the access",
        },
        "not-accepted": {
          words: "a reading does not show which path it is",
          because: "appliances and other pipes join the metal as well, and their removal takes the path away",
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
          words: "a bond that joins the pipe to the main earthing terminal",
          gone: any(
            no("continuous"),
            all(no("clamp-reached"), is("joined-by", "chance"), held("reading-for-clamp", "not-accepted")),
          ),
          sound: NEVER,
          regulations: ["411.3.1.2", "544.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: no("clamp-reached"),
      words: "the bonding connection is not accessible",
      regulations: ["543.3.2"],
    },
    { when: no("label"), words: "the bonding connection has no label", regulations: ["514.13.1"] },
  ],
  client: {
    C2: "A pipe is not linked to earth as it should be. In a fault you could get a shock from it. Have this put right soon.",
    C3: "The earth link to a pipe has no tag or cannot be seen. It works today. Make it easy to see and tag it.",
    FI: [
      unsure("We could not see how a pipe is linked to earth. Someone must open it up and look.", [
        "joined-by",
        "clamp-reached",
      ]),
      unsure("We could not test the earth link to a pipe. It must be tested.", ["continuous"]),
    ],
    none: "The earth link to this pipe can be seen and is marked.",
  },
  remedies: [
    { words: "Fix the label at the clamp.", changes: { label: "yes" } },
    {
      words: "Make an opening or a hatch at the clamp, and label it.",
      changes: { "clamp-reached": "yes", label: "yes" },
    },
    {
      words: "Bond the pipe anew where it can be reached, near where it comes in.",
      changes: { "clamp-reached": "yes", label: "yes", continuous: "yes", "joined-by": "bond" },
    },
  ],
  examples: [
    {
      name: "clamp behind a fitted kitchen, 0.04 Ω",
      facts: { "clamp-reached": false, label: false, continuous: true },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: bond not to be reached, continuity proved",
    },
    {
      name: "the same where a reading is held not to show the bond",
      facts: {
        "clamp-reached": false,
        label: false,
        continuous: true,
        "joined-by": { notKnown: "limited", reason: "the units were not to be taken out" },
      },
      positions: { "reading-for-clamp": "not-accepted" },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "trade discussion: bond not to be reached",
    },
    {
      name: "label missing, all else good",
      facts: { "clamp-reached": true, label: false, continuous: true },
      possible: ["C3"],
      source: "regulation 514.13.1",
    },
    {
      name: "clamp in view, 3 Ω",
      facts: { "clamp-reached": true, label: true, continuous: false },
      possible: ["C2"],
      source: "regulation 411.3.1.2: the bond does not join",
    },
    {
      name: "not measured",
      facts: { "clamp-reached": false, label: true },
      possible: ["C3", "C2"],
      missing: ["continuous"],
      source: "union over the reading",
    },
    {
      name: "in order",
      facts: { "clamp-reached": true, label: true, continuous: true },
      possible: ["none"],
      source: "regulation 543.3.2",
    },
  ],
});
