import { all, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { SYSTEM } from "./facts.ts";

/** A circuit on TT with no RCD to disconnect an earth fault. */
export const rcdNoneTt = topic({
  id: "rcd-none-tt",
  title: "No RCD on a TT system",
  group: "residual-current",
  items: ["boards.rcd", "circuits.protection"],
  facts: {
    system: SYSTEM,
    rcd: ranked({
      asks: "What senses an earth fault on the circuit?",
      effort: "glance",
      values: {
        working: "an RCD that suits the electrode stands before the circuit and works",
        "voltage-operated": "only an old voltage-operated earth-leakage breaker stands before the circuit",
        none: "no RCD that works stands before the circuit",
      },
      worked: { by: "maximum-zs", matter: "residual-disconnects", met: "working", notMet: "voltage-operated | none" },
    }),
    "breaker-disconnects": yesNo({
      asks: "Is the earth fault loop low enough for the breaker or fuse to disconnect in time by itself?",
      effort: "measured",
      yes: "the loop is low enough for the breaker or fuse to disconnect in time",
      no: "the loop is too high for the breaker or fuse to disconnect in time",
      worse: "no",
      worked: { by: "maximum-zs", matter: "overcurrent-disconnects", met: "yes", notMet: "no" },
    }),
    "loop-lasts": yesNo({
      asks: "Is that low value one to count on: an electrode or earth of known lasting kind, not a neighbour's pipe?",
      effort: "beyond",
      yes: "the low value rests on an earth known to last",
      no: "the low value rests on an earth that can go",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "fault-stays",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault and stays live, and somebody touches it",
      exists: all(is("system", "tt"), not(is("rcd", "working"))),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of the live parts", ["416.1"]),
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "a device that disconnects an earth fault",
          gone: no("breaker-disconnects"),
          sound: all(yes("breaker-disconnects"), yes("loop-lasts")),
          regulations: ["411.5.2", "411.5.3"],
        },
      ],
    },
    {
      id: "earth-goes",
      hazard: "shock-under-fault",
      route: "the chance earth that keeps the loop low is taken away, and the next fault stays",
      exists: all(is("system", "tt"), not(is("rcd", "working")), no("loop-lasts")),
      layers: [
        oneEventAway("chance-earth", "fault-protection", "an earth that may go at any time", ["411.5.2"]),
        {
          id: "rcd-behind",
          provision: "fault-protection",
          words: "an RCD behind it",
          gone: not(is("rcd", "working")),
          sound: NEVER,
          regulations: ["411.5.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("system", "tt"), not(is("rcd", "working"))),
      words: "fault protection on TT is not by an RCD",
      regulations: ["411.5.2"],
    },
  ],
  client: {
    C2: [
      says(
        "There is no safety switch here of a kind that works for you. A fault would not cut the power. Metal could stay live. Fit one soon.",
        no("breaker-disconnects"),
      ),
      says(
        "There is no safety switch here of a kind that works for you. What cuts off a fault today may go. Then metal could stay live. Fit one soon.",
        yes("breaker-disconnects"),
      ),
    ],
    C3: "There is no safety switch here of a kind that works for you. A fault still cuts the power today. One should be added.",
    FI: unsure("There may be no safe cut-off in a fault. We could not find out. This must be looked at soon.", [
      "rcd",
      "breaker-disconnects",
      "loop-lasts",
      "system",
    ]),
    none: "A fault cuts the power as it should.",
  },
  remedies: [{ words: "Fit an RCD that suits the electrode before all circuits.", changes: { rcd: "working" } }],
  examples: [
    {
      name: "loop 85 Ω, breakers only",
      facts: { system: "tt", rcd: "none", "breaker-disconnects": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: breaker cannot operate on an earth fault",
    },
    {
      name: "voltage-operated breaker",
      facts: { system: "tt", rcd: "voltage-operated", "breaker-disconnects": false },
      possible: ["C2"],
      source: "trade practice: voltage-operated breakers do not give fault protection",
    },
    {
      name: "loop very low, nobody knows why",
      facts: {
        system: "tt",
        rcd: "none",
        "breaker-disconnects": true,
        "loop-lasts": { notKnown: "limited", reason: "the path of the earth is buried" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over what the earth is",
    },
    {
      name: "system not yet settled",
      facts: { rcd: "none", "breaker-disconnects": false },
      possible: ["none", "C2"],
      missing: ["system"],
      source: "union over the system",
    },
  ],
});
