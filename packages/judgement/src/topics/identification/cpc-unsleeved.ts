import { all, any, held, is, ranked, says, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A bare protective conductor of a flat cable without its green-and-yellow sleeve inside an accessory. */
export const cpcUnsleeved = topic({
  id: "cpc-unsleeved",
  title: "Protective conductor without sleeve",
  group: "identification",
  items: ["circuits.identification", "accessories.connections"],
  facts: {
    sleeve: ranked({
      asks: "What covers the protective conductor where the sheath ends?",
      effort: "opened",
      values: {
        sleeved: "a green-and-yellow sleeve covers the protective conductor",
        "old-green": "a plain green sleeve covers the protective conductor",
        bare: "the protective conductor is bare where the sheath ends",
      },
    }),
    "near-terminals": yesNo({
      asks: "Lies the bare conductor where it can touch a live terminal when the plate goes back?",
      effort: "opened",
      yes: "the bare conductor can touch a live terminal when the plate is closed",
      no: "the bare conductor stays clear of live terminals",
      worse: "yes",
    }),
    "proof-of-earth": yesNo({
      asks: "Is it plain which core is the earth: bare copper of the cable's own, at the earth terminal?",
      effort: "opened",
      yes: "it is plain that the core is the earth",
      no: "it is not plain which core is the earth",
      worse: "no",
    }),
  },
  contested: {
    "marking-only": {
      question: "Is a missing sleeve worth recording where no user can come to harm?",
      positions: {
        record: {
          words: "it is worth recording as an improvement",
          because: "514.4.2 and 543.3.201 ask for it, and it costs a minute when the plate is off",
        },
        "leave-it": {
          words: "it is not recorded",
          because: "bare copper at the earth terminal is plain to see and no danger to users",
        },
      },
    },
  },
  paths: [],
  departures: [
    {
      when: all(
        is("sleeve", "bare"),
        any(held("marking-only", "record"), yes("near-terminals"), is("proof-of-earth", "no")),
      ),
      words: "the protective conductor has no sleeve",
      regulations: ["514.4.2", "543.3.201"],
    },
  ],
  client: {
    C3: "Some earth wires lack their cover inside sockets or switches. It is not a danger to you. They should be covered.",
    none: [
      says("The earth wires are covered as they should be.", is("sleeve", "sleeved", "old-green")),
      "It is clear which wires are earth wires.",
    ],
  },
  remedies: [{ words: "Sleeve it when the accessory is next open.", changes: { sleeve: "sleeved" } }],
  examples: [
    {
      name: "bare at an accessory",
      facts: { sleeve: "bare", "near-terminals": false, "proof-of-earth": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: marking missing",
    },
    {
      name: "the same, held not worth recording",
      facts: { sleeve: "bare", "near-terminals": false, "proof-of-earth": true },
      positions: { "marking-only": "leave-it" },
      possible: ["none"],
      source: "trade practice: no danger to users",
    },
    {
      name: "bare and pushed against a terminal, milder view",
      facts: { sleeve: "bare", "near-terminals": true },
      positions: { "marking-only": "leave-it" },
      possible: ["C3"],
      source: "trade practice: it can short when the plate goes back",
    },
    {
      name: "old green sleeve",
      facts: { sleeve: "old-green" },
      possible: ["none"],
      source: "regulation: not retrospective",
    },
    {
      name: "not opened",
      facts: {},
      possible: ["none", "C3"],
      missing: ["sleeve"],
      source: "union over what opening would show",
    },
  ],
});
