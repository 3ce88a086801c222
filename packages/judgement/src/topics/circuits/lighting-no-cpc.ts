import { all, any, held, is, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A lighting circuit without a protective conductor, as was usual before 1966. */
export const lightingNoCpc = topic({
  id: "lighting-no-cpc",
  title: "Lighting circuit without a protective conductor",
  group: "circuits",
  items: ["circuits.cpc"],
  facts: {
    "cpc-present": yesNo({
      asks: "Is a protective conductor continuous to every point of the circuit?",
      effort: "measured",
      yes: "a protective conductor reaches every point",
      no: "points have no protective conductor",
      worse: "no",
    }),
    fittings: ranked({
      asks: "What fittings and switches are there at the points without one?",
      effort: "glance",
      values: {
        insulated: "every fitting and switch is class II or all-insulated",
        "metal-screws": "fittings are insulated, but reachable screws go into metal boxes",
        "class-1": "at least one fitting or plate has metal that wants earthing",
      },
    }),
    notice: yesNo({
      asks: "Is there a lasting notice at the board that the lighting has no protective conductor?",
      effort: "glance",
      yes: "a notice at the board says so",
      no: "no notice at the board says so",
      worse: "no",
    }),
    "users-change-fittings": yesNo({
      asks: "Could the people here well change fittings themselves?",
      effort: "glance",
      yes: "the users may well change fittings",
      no: "nobody but an electrician changes fittings",
      worse: "yes",
    }),
  },
  contested: {
    "future-metal-fitting": {
      question: "Does a metal fitting that users might put up later count as a foreseeable step to danger today?",
      positions: {
        "with-notice-not": {
          words: "it counts only where users change fittings and no notice warns them",
          because: "a notice at the board is what tells the next person",
        },
        "does-not-count": {
          words: "what somebody may fit later is not a defect of what is there",
          because: "every fitting in place is insulated, so no metal can become live",
        },
        "always-counts": {
          words: "insulated fittings alone are no protection for a whole circuit",
          because: "412.1.3 wants effective supervision where class II is the only measure",
        },
      },
    },
  },
  paths: [
    {
      id: "live-metal",
      hazard: "shock-under-fault",
      route: "metal of a fitting becomes live through a fault and stays live, and somebody touches it",
      exists: no("cpc-present"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of the live parts inside the fitting", ["416.1"]),
        {
          id: "second-insulation",
          provision: "fault-protection",
          words: "insulation of every fitting, so that no metal can become live",
          gone: any(
            is("fittings", "class-1", "metal-screws"),
            held("future-metal-fitting", "always-counts"),
            all(held("future-metal-fitting", "with-notice-not"), yes("users-change-fittings"), no("notice")),
          ),
          sound: is("fittings", "insulated"),
          regulations: ["412.1.3", "411.3.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: no("cpc-present"),
      words: "the circuit has no protective conductor",
      regulations: ["411.3.1.1"],
    },
  ],
  client: {
    C2: [
      says(
        "Some lights have metal parts but no earth wire. If a wire comes loose, the metal could give a shock.",
        is("fittings", "class-1", "metal-screws"),
      ),
      says(
        "The lights have no earth wire. If a metal light is put up, it could give a shock. Have an earth wire put in soon.",
        is("fittings", "insulated"),
      ),
    ],
    C3: "The lights have no earth wire. The lights you have now are safe without one. Do not put up metal lights.",
    FI: [
      unsure("We could not find out if all lights have an earth wire. This must be looked at.", ["cpc-present"]),
      unsure(
        "We could not find out if all lights are safe without an earth wire. This must be looked at.",
        ["fittings", "notice", "users-change-fittings"],
        no("cpc-present"),
      ),
    ],
    none: "The lights are earthed as they should be.",
  },
  remedies: [
    {
      words: "Where every fitting is insulated, fix a lasting notice at the board.",
      changes: { notice: "yes" },
    },
    {
      words: "Replace metal fittings and plates by class II ones with insulated screws, and fix a notice at the board.",
      changes: { fittings: "insulated", notice: "yes" },
    },
    { words: "Run a protective conductor to every point.", changes: { "cpc-present": "yes" } },
  ],
  examples: [
    {
      name: "all class II, notice at the board",
      facts: { "cpc-present": false, fittings: "insulated", notice: true, "users-change-fittings": true },
      possible: ["C3"],
      source: "trade discussion: no protective conductor, all-insulated fittings",
    },
    {
      name: "class I fitting",
      facts: { "cpc-present": false, fittings: "class-1", notice: true, "users-change-fittings": false },
      possible: ["C2"],
      source: "trade practice: fault protection absent",
    },
    {
      name: "no notice in a let home",
      facts: { "cpc-present": false, fittings: "insulated", notice: false, "users-change-fittings": true },
      possible: ["C2"],
      source: "trade discussion: no protective conductor, users change fittings",
    },
    {
      name: "fittings not looked at",
      facts: { "cpc-present": false, notice: true },
      possible: ["C3", "C2"],
      missing: ["fittings"],
      source: "union over what is fitted",
    },
  ],
});
