import { ALWAYS, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HOT_NOW, HOT_NOW_TOLD, heatAtIntake } from "./facts.ts";

/** How the tails enter boards and boxes: edges, hold, and magnetic material between them. */
export const meterTailsEntry = topic({
  id: "meter-tails-entry",
  title: "Meter tails badly entered or held",
  group: "intake",
  items: ["intake.meter-tails", "boards.connections"],
  facts: {
    edge: ranked({
      asks: "What do the tails rest on where they enter?",
      effort: "glance",
      values: {
        bushed: "a gland, bush or smooth insulating edge is around them",
        bare: "a bare metal edge is around them, and does not press on them",
        cutting: "a metal edge presses into them or has cut the sheath",
      },
    }),
    held: yesNo({
      asks: "Are they held by something other than their terminals?",
      effort: "glance",
      yes: "clips or a gland hold the tails",
      no: "only their terminals hold the tails",
      worse: "no",
    }),
    "one-opening": yesNo({
      asks: "Do line and neutral go through the same opening, where the metal is steel?",
      effort: "glance",
      yes: "line and neutral share an opening, or the wall is not of steel",
      no: "line and neutral go through steel by openings of their own",
      worse: "no",
    }),
    heat: heatAtIntake({
      asks: "Are edge, tails or terminals discoloured, or warm under load?",
      effort: "glance",
      none: "there are no signs of heat",
      marks: "there are signs of heat",
    }),
  },
  contested: {},
  paths: [
    {
      id: "edge-cuts",
      hazard: "shock-under-fault",
      route: "the edge cuts through to a conductor, and the metal case becomes live or arcs on the main fuse",
      exists: ALWAYS,
      layers: [
        {
          id: "edge",
          provision: "barrier-or-enclosure",
          words: "an edge that does not cut",
          gone: is("edge", "cutting"),
          sound: NEVER,
          regulations: ["522.8.1", "522.8.11"],
        },
        oneEventAway("insulation", "insulation", "the insulation beneath the sheath", ["416.1"]),
      ],
    },
    {
      id: "heat",
      hazard: "burns-or-fire",
      route: "a strained terminal or steel between the tails heats until something burns",
      exists: ALWAYS,
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "terminals and edges that stay cool",
          gone: is("heat", "marks", "now"),
          sound: NEVER,
          regulations: ["521.5.1", "526.1"],
        },
        oneEventAway("around", "surroundings", "enclosures and surroundings that do not burn", ["421.1.1"]),
      ],
    },
  ],
  departures: [
    {
      when: is("edge", "bare", "cutting"),
      words: "the tails are not protected against the edge of the opening",
      regulations: ["522.8.1", "522.8.11"],
    },
    { when: no("held"), words: "the tails strain their terminals", regulations: ["522.8.5", "526.6"] },
    {
      when: no("one-opening"),
      words: "steel lies between line and neutral",
      regulations: ["521.5.1"],
    },
  ],
  dangers: [HOT_NOW],
  client: {
    C1: HOT_NOW_TOLD,
    C2: [
      says(
        "Metal cuts or presses into the main wires. They could give a shock or burn. Have this put right soon.",
        is("edge", "cutting"),
      ),
      says(
        "The main wires have been hot where they go in. They could burn. Have this put right soon.",
        is("heat", "marks"),
      ),
    ],
    C3: "The main wires should go in and be held in a better way. It is not a danger now.",
    FI: unsure("We could not see how the main wires go in. This must be looked at.", ["edge", "heat"]),
    none: "The main wires go in as they should.",
  },
  remedies: [
    { words: "Clip the tails close to the entry.", changes: { held: "yes" } },
    {
      words: "Fit a gland or bush; replace a tail whose insulation is cut.",
      changes: { edge: "bushed", held: "yes" },
    },
    {
      words: "Bring line and neutral through one opening, or slot the steel between them.",
      changes: { "one-opening": "yes" },
    },
    { words: "Make off the heated terminal anew, and replace what the heat has harmed.", changes: { heat: "none" } },
  ],
  examples: [
    {
      name: "tails through a knock-out without bush, not pressed",
      facts: { edge: "bare", held: true, "one-opening": true, heat: "none" },
      possible: ["C3"],
      source: "trade practice: edge without bush",
    },
    {
      name: "edge has cut the sheath",
      facts: { edge: "cutting", heat: "none" },
      possible: ["C2"],
      source: "trade practice: one layer left on the main fuse",
    },
    {
      name: "two steel knock-outs, no warmth under load",
      facts: { edge: "bushed", held: true, "one-opening": false, heat: "none" },
      possible: ["C3"],
      source: "regulation 521.5.1",
    },
    {
      name: "tails hang from their terminals",
      facts: { edge: "bushed", held: false, "one-opening": true, heat: "none" },
      possible: ["C3"],
      source: "regulation 522.8.5",
    },
    {
      name: "gland and clips",
      facts: { edge: "bushed", held: true, "one-opening": true, heat: "none" },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "edge hidden behind the board",
      facts: { held: true, "one-opening": true, heat: "none" },
      possible: ["none", "C3", "C2"],
      missing: ["edge"],
      source: "union over the edge",
    },
  ],
});
