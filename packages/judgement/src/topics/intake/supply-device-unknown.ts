import { ALWAYS, all, any, held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Type and rating of the distributor's fuse cannot be verified. */
export const supplyDeviceUnknown = topic({
  id: "supply-device-unknown",
  title: "Type or rating of the main fuse not verified",
  group: "intake",
  items: ["intake.cut-out"],
  facts: {
    shown: ranked({
      asks: "Without drawing the carrier, what shows the rating of the main fuse?",
      effort: "glance",
      values: {
        "sealed-marked":
          "under a whole seal, the carrier is marked or the rating declared, and it suits tails and main switch",
        "sealed-unmarked": "the seal is whole, and no rating is marked or declared",
        "seal-broken": "the seal is missing or broken, so that the fuse may have been changed",
        "too-large": "what is marked, declared or seen is too large for tails or main switch, or is no fuse at all",
      },
    }),
    inside: ranked({
      asks: "With the carrier drawn by somebody authorised, what is in it?",
      effort: "beyond",
      values: {
        suits: "the carrier holds a fuse that suits tails and main switch",
        "too-large": "the carrier holds a fuse too large for tails or main switch",
        bridged: "the carrier holds a link, wire or a fuse of the wrong kind",
      },
    }),
  },
  contested: {
    evidence: {
      question: "What has to show the rating of a sealed main fuse?",
      positions: {
        noted: {
          words: "under a whole seal, a fuse not verified is noted as a limitation and not classified",
          because:
            "the carrier is the distributor's, the inspector may not draw it, and nothing points to a wrong fuse",
        },
        marking: {
          words: "a marking or declaration is needed, and without one the rating has to be found out",
          because: "whether the tails are protected depends on it",
        },
        "fuse-itself": {
          words: "only the fuse itself shows what it is",
          because: "carriers often hold a fuse other than the one they are marked for",
        },
      },
    },
  },
  paths: [
    {
      id: "tails-overheat",
      hazard: "burns-or-fire",
      route: "overload or a short-circuit heats the tails, and nothing interrupts it in time",
      exists: ALWAYS,
      layers: [
        oneEventAway("load", "thermal-protection", "a load that the tails carry, and no fault in them", ["433.1.1"]),
        {
          id: "fuse",
          provision: "overcurrent-protection",
          words: "a main fuse that suits what comes after it",
          gone: any(
            is("shown", "too-large"),
            all(
              is("inside", "too-large", "bridged"),
              any(
                is("shown", "seal-broken"),
                held("evidence", "fuse-itself"),
                all(is("shown", "sealed-unmarked"), held("evidence", "marking")),
              ),
            ),
          ),
          sound: NEVER,
          regulations: ["433.1.1", "434.5.1"],
        },
      ],
    },
  ],
  departures: [],
  client: {
    C2: "The main fuse is too big or not a real fuse. The main wires could get too hot. Call the power network soon.",
    FI: unsure("We could not find out which main fuse is fitted. Ask the power network to check it.", [
      "shown",
      "inside",
    ]),
    none: [
      says("Nothing points to a wrong main fuse.", is("inside", "suits")),
      says("The mark on the main fuse suits the main wires.", is("shown", "sealed-marked")),
    ],
  },
  remedies: [
    {
      words:
        "Ask the distributor for the rating, or to draw the carrier, replace the fuse where needed, mark and seal it.",
      changes: { shown: "sealed-marked", inside: "suits" },
    },
  ],
  examples: [
    {
      name: "sealed, marked 100 A, 25 mm² tails",
      facts: { shown: "sealed-marked" },
      possible: ["none"],
      classification: "none",
      source: "trade practice: a limitation, not an observation",
    },
    {
      name: "sealed and without marking",
      facts: { shown: "sealed-unmarked" },
      possible: ["none"],
      source: "trade practice: a limitation, not an observation",
    },
    {
      name: "the same where a marking is held to be needed",
      facts: {
        shown: "sealed-unmarked",
        inside: { notKnown: "limited", reason: "the carrier is sealed by the distributor" },
      },
      positions: { evidence: "marking" },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade discussion of unverified main fuses",
    },
    {
      name: "seal cut, contents not known",
      facts: {
        shown: "seal-broken",
        inside: { notKnown: "limited", reason: "the carrier was not to be drawn" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade practice: signs of tampering",
    },
    {
      name: "wire wound across the fuse contacts",
      facts: { shown: "too-large" },
      possible: ["C2"],
      source: "regulation 434.5.1",
    },
    {
      name: "not looked at",
      facts: {},
      possible: ["none", "C2"],
      missing: ["shown"],
      source: "union over what is shown",
    },
  ],
});
