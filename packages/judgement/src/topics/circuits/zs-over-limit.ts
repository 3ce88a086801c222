import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Earth fault loop impedance of a circuit above what its overcurrent device needs, or above what its cable gives. */
export const zsOverLimit = topic({
  id: "zs-over-limit",
  title: "Earth fault loop impedance too high",
  group: "circuits",
  items: ["circuits.protection", "circuits.cpc"],
  facts: {
    disconnects: ranked({
      asks: "With Zs at operating temperature, does the overcurrent device or an RCD disconnect in the permitted time?",
      effort: "measured",
      values: {
        "voltage-held":
          "supplementary bonding, shown by reading, holds the touch voltage to 50 V for as long as the fault lasts",
        "in-time": "a device disconnects an earth fault in the permitted time",
        "not-in-time": "no device disconnects an earth fault in the permitted time",
      },
      worked: { by: "maximum-zs", met: "in-time", notMet: "not-in-time" },
    }),
    by: ranked({
      asks: "Which device is it that disconnects in time?",
      effort: "measured",
      values: {
        overcurrent:
          "the overcurrent device alone would disconnect in time, with the exact value at operating temperature",
        "rcd-only": "the value is over the limit of the overcurrent device, so that only an RCD disconnects in time",
      },
      worked: { by: "maximum-zs", matter: "overcurrent-disconnects", met: "overcurrent", notMet: "rcd-only" },
    }),
    "rcd-tested": yesNo({
      asks: "Did that RCD pass its test, and does it stand ahead of the whole circuit?",
      effort: "measured",
      yes: "the RCD passed its test and covers the whole circuit",
      no: "the RCD was not shown to work, or does not cover the whole circuit",
      worse: "no",
      worked: { by: "maximum-zs", matter: "residual-disconnects", met: "yes", notMet: "no" },
    }),
    unaccounted: yesNo({
      asks: "Is the reading well above what length, size and earlier readings account for, or unsteady?",
      effort: "measured",
      yes: "the reading is well above what the cable accounts for",
      no: "nothing speaks against the reading being that of a sound cable",
      worse: "yes",
      worked: {
        by: "r1r2-length",
        matter: "resistance-not-above",
        and: [{ by: "zs-agreement", matter: "readings-not-above" }],
        met: "no",
        notMet: "yes",
      },
    }),
    "failing-joint": yesNo({
      asks: "If so: is a poor joint or a damaged conductor the cause?",
      effort: "opened",
      yes: "a poor joint or a damaged conductor is behind it",
      no: "a harmless cause was found, such as a longer route or a worn plug of the instrument",
      worse: "yes",
    }),
  },
  contested: {
    "rcd-in-place": {
      question:
        "The limit of the overcurrent device is exceeded and an RCD disconnects in time. Is that a shortcoming?",
      positions: {
        permitted: {
          words: "an RCD may be the device for fault protection, so nothing is short",
          because: "411.4.204 and 411.4.5 let an RCD do it where the loop is low enough for it",
        },
        improve: {
          words: "a circuit meant to be cleared by its breaker is short of its design and should be improved",
          because: "a device with moving parts and a test button is then the only one left",
        },
      },
    },
  },
  paths: [
    {
      id: "no-disconnection",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, the supply stays on, and somebody touches it",
      exists: any(is("disconnects", "voltage-held", "not-in-time"), is("by", "rcd-only")),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "automatic disconnection in the permitted time",
          gone: any(is("disconnects", "voltage-held", "not-in-time"), all(is("by", "rcd-only"), no("rcd-tested"))),
          sound: NEVER,
          regulations: ["411.3.2", "411.4.4", "411.5.3"],
        },
        {
          id: "bonding",
          provision: "equipotential-bonding",
          words: "supplementary bonding of everything within reach",
          gone: is("disconnects", "in-time", "not-in-time"),
          sound: NEVER,
          regulations: ["411.3.2.6", "415.2.2"],
        },
      ],
    },
    {
      id: "hot-joint",
      hazard: "burns-or-fire",
      route: "a poor joint heats under load or opens when a fault comes",
      // Whatever clears a fault today: a joint that is failing is one event from heat or from no earth.
      exists: all(yes("unaccounted"), yes("failing-joint")),
      layers: [
        {
          id: "connection",
          provision: "thermal-protection",
          words: "a connection of low resistance",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["526.1"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure of the joint", ["526.5"]),
      ],
    },
  ],
  departures: [
    {
      when: is("disconnects", "not-in-time"),
      words: "an earth fault is not cleared in the permitted time",
      regulations: ["411.3.2"],
    },
    {
      when: all(is("by", "rcd-only"), held("rcd-in-place", "improve")),
      words: "the overcurrent device alone would not clear an earth fault in time",
      regulations: ["411.4.4"],
    },
  ],
  client: {
    C2: [
      says(
        "If a fault makes metal live here, the power may not go off fast enough. That could give a bad shock. Have it fixed soon.",
        any(
          is("disconnects", "not-in-time"),
          all(is("disconnects", "in-time"), is("by", "rcd-only"), no("rcd-tested")),
        ),
      ),
      says(
        "A joint or a wire here is bad. It could get hot or fail in a fault. Have it fixed soon.",
        all(yes("unaccounted"), yes("failing-joint")),
      ),
    ],
    C3: [
      says(
        "The fuse alone would be too slow in a fault. A safety switch does the job for now. Lowering the value would be better.",
        is("disconnects", "in-time"),
      ),
      says(
        "The fuse alone would be too slow in a fault. Metal that is linked keeps you safe for now. Lowering the value would be better.",
        is("disconnects", "voltage-held"),
      ),
    ],
    FI: [
      unsure(
        "A test value is much higher than it should be, and we do not know why. It could be a bad joint. This must be looked at.",
        ["failing-joint"],
        yes("unaccounted"),
      ),
      unsure("We could not find out if the power would go off in time in a fault. This must be looked at.", [
        "disconnects",
        "by",
        "rcd-tested",
        "unaccounted",
        "failing-joint",
      ]),
    ],
    none: [
      says("In a fault the power goes off in time here.", is("disconnects", "in-time")),
      says("In a fault the metal here stays at a safe level.", is("disconnects", "voltage-held")),
    ],
  },
  remedies: [
    {
      words: "Check and tighten every connection of the circuit from the board outwards, and measure again.",
      changes: { unaccounted: "no", "failing-joint": "no" },
    },
    {
      words: "Fit an RCD ahead of the whole circuit and test it.",
      changes: { disconnects: "in-time", "rcd-tested": "yes" },
    },
    {
      words: "Fit a device of a smaller rating or a more sensitive type, where the load allows it.",
      changes: { disconnects: "in-time", by: "overcurrent" },
    },
    {
      words: "Run a larger protective conductor, or rewire the circuit by a shorter route.",
      changes: { disconnects: "in-time", by: "overcurrent" },
    },
  ],
  examples: [
    {
      name: "within its limit, and a loose earth joint found",
      facts: { disconnects: "in-time", by: "overcurrent", unaccounted: true, "failing-joint": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a joint that is going is one event from no earth",
    },
    {
      name: "over the breaker's limit, a tested 30 mA RCD does it, sound conductor",
      facts: { disconnects: "in-time", by: "rcd-only", "rcd-tested": true, unaccounted: false },
      possible: ["none"],
      classification: "none",
      source: "regulation 411.4.204; arithmetic: 1.75 Ω × 0.030 A = 0.05 V",
    },
    {
      name: "the same where the breaker is held to be the intended device",
      facts: { disconnects: "in-time", by: "rcd-only", "rcd-tested": true, unaccounted: false },
      positions: { "rcd-in-place": "improve" },
      possible: ["C3"],
      source: "trade discussion: improvement advised",
    },
    {
      name: "the same, value far above what its length gives, cause not known",
      facts: {
        disconnects: "in-time",
        by: "rcd-only",
        "rcd-tested": true,
        unaccounted: true,
        "failing-joint": { notKnown: "limited", reason: "joints are behind fixed finishes" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade discussion: a masked defect cannot be ruled out",
    },
    {
      name: "fails 0.8 of the limit cold, 1.30 Ω hot against 1.37 Ω",
      facts: { disconnects: "in-time", by: "overcurrent", unaccounted: false },
      possible: ["none"],
      classification: "none",
      source: "arithmetic: 0.70 + 0.50 × 1.20 = 1.30, at most 218.5 ÷ 160 = 1.366",
    },
    {
      name: "electrode of 85 Ω, breakers only",
      facts: { disconnects: "not-in-time" },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: 230 ÷ 85 = 2.7 A, which opens no lighting breaker; regulation 411.5.2",
    },
    {
      name: "only an RCD would do it, not yet tested",
      facts: { disconnects: "in-time", by: "rcd-only", unaccounted: false },
      possible: ["none", "C2"],
      missing: ["rcd-tested"],
      source: "union over what the RCD test would show",
    },
  ],
});
