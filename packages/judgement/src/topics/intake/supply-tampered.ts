import { all, held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Signs that somebody without authority has been at the cut-out or the meter. */
export const supplyTampered = topic({
  id: "supply-tampered",
  title: "Signs of tampering at cut-out or meter",
  group: "intake",
  items: ["intake.cut-out", "intake.meter", "intake.meter-tails"],
  facts: {
    found: ranked({
      asks: "What has been done?",
      effort: "glance",
      values: {
        nothing: "seals are whole, and nothing has been changed",
        seals: "seals are missing, and nothing else is changed to be seen",
        bypass: "a conductor leads round the meter or taps the supply before it",
        "fuse-bridged": "the main fuse is bridged or replaced by something else",
      },
    }),
    joints: ranked({
      asks: "How are the joints of what was done?",
      effort: "glance",
      values: {
        enclosed: "every joint is enclosed, or nothing was joined",
        taped: "joints are taped or loosely covered, and no live metal is reached",
        "live-reached": "live metal can be touched",
      },
    }),
  },
  contested: {
    "seal-missing": {
      question: "Is a missing seal, with nothing else to be seen, worth an observation?",
      positions: {
        told: {
          words: "the supplier or distributor is told, and nothing is classified",
          because: "seals are often not replaced after work, and a seal protects nobody from a shock",
        },
        improvement: {
          words: "it is an improvement to have it sealed",
          because: "without a seal anybody opens the cut-out",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches a live joint that is fed before every switch",
      exists: is("found", "bypass", "fuse-bridged"),
      layers: [
        {
          id: "joints",
          provision: "barrier-or-enclosure",
          words: "an enclosure around every joint",
          gone: is("joints", "live-reached"),
          sound: is("joints", "enclosed"),
          regulations: ["416.2.1", "526.5"],
        },
      ],
    },
    {
      id: "no-fuse",
      hazard: "burns-or-fire",
      route: "a fault or overload is not interrupted, and conductors burn",
      exists: is("found", "bypass", "fuse-bridged"),
      layers: [
        {
          id: "fuse",
          provision: "overcurrent-protection",
          words: "a main fuse through which all the current flows",
          gone: is("found", "fuse-bridged", "bypass"),
          sound: NEVER,
          regulations: ["433.1.1", "434.5.1"],
        },
        {
          id: "no-fault",
          provision: "insulation",
          words: "the absence of faults and overload",
          gone: NEVER,
          sound: NEVER,
          regulations: ["416.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("found", "seals"), held("seal-missing", "improvement")),
      words: "the cut-out or meter can be opened without leaving a trace",
      regulations: ["134.1.1"],
    },
  ],
  dangers: [
    {
      id: "live-joint",
      least: "C1",
      when: is("joints", "live-reached"),
      words: "live metal of a joint before every switch can be touched",
      regulations: ["416.1", "416.2.1"],
    },
  ],
  client: {
    C1: [
      says(
        "The main supply has been changed and live metal can be touched. It can kill. Keep away. Call the power network now.",
        is("found", "bypass", "fuse-bridged"),
      ),
      "Live metal can be touched where the power comes in. It can kill. Keep away. Call the power network now.",
    ],
    C2: "The main supply has been changed in an unsafe way. It could start a fire or give a shock. Call the power network now.",
    C3: "A seal is gone where the power comes in. Ask the power firm to put one on.",
    FI: [
      unsure("The main supply may have been changed. We could not see how. The power network must look at it.", [
        "found",
      ]),
      unsure(
        "We could not see if live metal can be touched where the power comes in. The power network must look at it.",
        ["joints"],
      ),
    ],
    none: "The main supply shows no unsafe change.",
  },
  remedies: [
    { words: "Tell the supplier or distributor, and ask for new seals.", changes: { found: "nothing" } },
    {
      words:
        "Keep people away, tell the distributor and the person who ordered the report at once, and have it all removed.",
      changes: { found: "nothing", joints: "enclosed" },
    },
  ],
  examples: [
    {
      name: "seal missing, nothing else",
      facts: { found: "seals", joints: "enclosed" },
      possible: ["none"],
      source: "trade practice: told to the distributor",
    },
    {
      name: "the same where it is held to be an improvement",
      facts: { found: "seals", joints: "enclosed" },
      positions: { "seal-missing": "improvement" },
      possible: ["C3"],
      source: "trade discussion of missing seals",
    },
    {
      name: "taped conductor round the meter",
      facts: { found: "bypass", joints: "taped" },
      possible: ["C2"],
      source: "trade practice: joints not enclosed, on the main fuse or none",
    },
    {
      name: "bare joint before the meter",
      facts: { found: "bypass", joints: "live-reached" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: live parts in reach",
    },
    {
      name: "bolt in place of the main fuse",
      facts: { found: "fuse-bridged", joints: "enclosed" },
      possible: ["C2"],
      source: "regulation 434.5.1",
    },
    {
      name: "behind a boxing that was not to be opened",
      facts: {
        found: { notKnown: "limited", reason: "the boxing was not to be opened" },
        joints: { notKnown: "limited", reason: "the boxing was not to be opened" },
      },
      possible: ["none", "C2", "C1"],
      classification: "FI",
      source: "union over what was done",
    },
    {
      name: "tapped before the meter, joints not looked at",
      facts: { found: "bypass" },
      possible: ["C2", "C1"],
      missing: ["joints"],
      source: "union over the joints",
    },
  ],
});
