import { all, held, is, no, ranked, says, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Neutral and protective conductors that do not follow the order of the ways. */
export const boardConductorOrder = topic({
  id: "board-conductor-order",
  title: "Conductors not in the order of the ways",
  group: "boards",
  items: ["boards.labels", "circuits.identification"],
  facts: {
    order: ranked({
      asks: "Do neutrals and protective conductors follow the order of the ways, or are they marked?",
      effort: "opened",
      values: {
        "in-order": "neutral and protective conductors follow the order of the ways, or are marked",
        mixed: "neutral or protective conductors do not follow the order of the ways and are not marked",
      },
    }),
    "high-leakage-noted": yesNo({
      asks: "Do circuits with high protective conductor current have their own two terminals and a note at the board?",
      effort: "opened",
      yes: "circuits with high protective conductor current have terminals of their own and a note, or there are none",
      no: "a circuit with high protective conductor current lacks its own terminals or the note",
      worse: "no",
    }),
    "own-terminals": yesNo({
      asks: "Does each circuit have a terminal of its own on both bars?",
      effort: "opened",
      yes: "each circuit has a terminal of its own on both bars",
      no: "circuits share a terminal on a bar",
      worse: "no",
    }),
  },
  contested: {
    weight: {
      question: "Is an order that does not match worth an entry?",
      positions: {
        improvement: {
          words: "it is an improvement to advise",
          because: "the next person may take off the wrong neutral or protective conductor",
        },
        "no-entry": {
          words: "it is no matter for the report",
          because: "whoever works there proves which conductor is which",
        },
      },
    },
  },
  paths: [],
  departures: [
    {
      when: all(is("order", "mixed"), held("weight", "improvement")),
      words: "conductors are not arranged or marked so that the circuit they belong to is plain",
      regulations: ["514.1.2"],
    },
    {
      when: no("high-leakage-noted"),
      words: "a circuit with high protective conductor current is not connected and noted as it should be",
      regulations: ["543.7.1"],
    },
    {
      when: no("own-terminals"),
      words: "circuits cannot be disconnected singly at the bar",
      regulations: ["314.4"],
    },
  ],
  client: {
    C3: "The wires in the fuse box are not in good order. It is no danger. It should be tidied at the next work.",
    none: says("The wires in the fuse box are in good order.", is("order", "in-order")),
  },
  remedies: [
    { words: "Put the conductors in order, or mark them.", changes: { order: "in-order" } },
    {
      words: "Give each circuit terminals of its own, and circuits with high protective conductor current the note.",
      changes: { "own-terminals": "yes", "high-leakage-noted": "yes" },
    },
  ],
  examples: [
    {
      name: "neutrals out of order",
      facts: { order: "mixed", "high-leakage-noted": true, "own-terminals": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: arrangement and marking",
    },
    {
      name: "the same held to be no entry",
      facts: { order: "mixed", "high-leakage-noted": true, "own-terminals": true },
      positions: { weight: "no-entry" },
      possible: ["none"],
      source: "trade discussion: order of conductors",
    },
    {
      name: "bars not looked at",
      facts: { "high-leakage-noted": true, "own-terminals": true },
      possible: ["none", "C3"],
      missing: ["order"],
      source: "union over the order",
    },
  ],
});
