import { all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A terminal inside an accessory that is loose, overfilled or grips the insulation. */
export const accessoryConnectionLoose = topic({
  id: "accessory-connection-loose",
  title: "Loose or poor connection in an accessory",
  group: "accessories",
  items: ["accessories.connections", "circuits.terminations"],
  facts: {
    connection: ranked({
      asks: "What is wrong with the connection?",
      effort: "opened",
      values: {
        sound: "the connection is tight and made as it should be",
        untidy: "the connection is tight, with strands cut, too much bare copper or too many cores",
        loose: "a core moves in its terminal, or the screw grips the insulation",
        arcing: "the connection is pitted, arcing or hot",
      },
    }),
    "put-right": yesNo({
      asks: "Was it put right during the inspection, with heat-damaged copper cut back?",
      effort: "glance",
      yes: "the connection was put right during the inspection",
      no: "the connection has been left as it was found",
      worse: "no",
    }),
    "burns-nearby": yesNo({
      asks: "Is it, while arcing, against something that burns or without a closed box?",
      effort: "opened",
      yes: "something that burns is next to the connection",
      no: "a closed box holds the heat of the connection",
      worse: "yes",
    }),
  },
  contested: {
    "as-found": {
      question: "Is a connection that was put right on the spot classified as it was found?",
      positions: {
        "as-left": {
          words: "what was put right before the report was signed is noted and not classified",
          because: "nobody is in danger from it and nothing is left to be done",
        },
        "as-found": {
          words: "it is classified as it was found, with a note that it was put right",
          because: "the report tells what state the installation was in, and the next connection may be like it",
        },
      },
    },
  },
  paths: [
    {
      id: "arcs",
      hazard: "burns-or-fire",
      route: "the loose connection arcs under load and sets something alight",
      exists: all(is("connection", "loose", "arcing"), any(no("put-right"), held("as-found", "as-found"))),
      layers: [
        {
          id: "box",
          provision: "thermal-protection",
          words: "a closed box round the connection, or no load on it yet",
          gone: all(is("connection", "arcing"), is("burns-nearby", "yes")),
          sound: NEVER,
          regulations: ["526.1", "526.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("connection", "untidy", "loose", "arcing"), any(no("put-right"), held("as-found", "as-found"))),
      words: "the connection is not made as it should be",
      regulations: ["526.1", "526.2"],
    },
  ],
  client: {
    C1: [
      says(
        "A loose wire is sparking next to something that burns. Do not use this point. Have it made safe now.",
        no("put-right"),
      ),
      says(
        "A loose wire was sparking next to something that burns. It was put right during the visit.",
        yes("put-right"),
      ),
    ],
    C2: [
      says(
        "A wire is loose or gets hot in a socket, switch or light. It could start a fire. It must be made tight soon.",
        no("put-right"),
      ),
      says(
        "A wire was loose or got hot in a socket, switch or light. It was put right during the visit.",
        yes("put-right"),
      ),
    ],
    C3: [
      says(
        "Some wires are not joined in the neatest way. It is not a danger now. They should be made better.",
        no("put-right"),
      ),
      says("Some wires were not joined in the neatest way. They were made better during the visit.", yes("put-right")),
    ],
    FI: [
      unsure("We could not open a point to see if its wires are tight. This must be looked at soon.", ["connection"]),
      unsure("We could not find out if a loose wire was put right. It must be looked at soon.", ["put-right"]),
    ],
    none: "The wires are tight.",
  },
  remedies: [
    {
      words: "Cut back, remake and tighten the connection, and open others to compare.",
      changes: { connection: "sound" },
    },
  ],
  examples: [
    {
      name: "neutral moves in a socket terminal",
      facts: { connection: "loose", "put-right": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: loose connection",
    },
    {
      name: "the same, tightened on the spot",
      facts: { connection: "loose", "put-right": true },
      possible: ["none"],
      source: "trade discussion: noted and not classified",
    },
    {
      name: "tightened on the spot, other view",
      facts: { connection: "loose", "put-right": true },
      positions: { "as-found": "as-found" },
      possible: ["C2"],
      source: "trade discussion: classified as found",
    },
    {
      name: "arcing against a timber wall",
      facts: { connection: "arcing", "put-right": false, "burns-nearby": true },
      possible: ["C1"],
      source: "trade practice: burning now",
    },
    {
      name: "strands cut, tight",
      facts: { connection: "untidy", "put-right": false },
      possible: ["C3"],
      source: "trade practice: poor and holding",
    },
    {
      name: "not opened",
      facts: { "put-right": false, "burns-nearby": false },
      possible: ["none", "C3", "C2"],
      missing: ["connection"],
      source: "union over what opening would show",
    },
  ],
});
