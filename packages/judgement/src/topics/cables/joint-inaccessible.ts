import { all, any, held, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A joint that needs to be got at for inspection and cannot: screw terminals under a floor, above a fixed ceiling. */
export const jointInaccessible = topic({
  id: "joint-inaccessible",
  title: "Joint that cannot be got at",
  group: "cables",
  items: ["circuits.terminations"],
  facts: {
    kind: ranked({
      asks: "How is the joint made?",
      effort: "opened",
      values: {
        lasting: "the joint is welded, soldered, compressed, encapsulated or of a kind marked as maintenance-free",
        screw: "the joint has screw terminals",
      },
    }),
    access: ranked({
      asks: "What would it take to get at it?",
      effort: "glance",
      values: {
        free: "it can be got at for inspection",
        "lift-floor": "a carpet and a board have to be lifted, without damage to the building",
        buried: "it is built in, and the building would have to be broken open",
      },
    }),
    load: ranked({
      asks: "What does it carry?",
      effort: "glance",
      values: {
        light: "it carries a light load, such as lighting",
        heavy: "it carries heavy or lasting load, such as a shower, cooker, heating or vehicle charging",
      },
    }),
    "poor-joint": yesNo({
      asks: "Do readings or signs show a poor joint: resistance above what the length gives, unsteady values, heat, smell?",
      effort: "measured",
      yes: "readings or signs show a poor joint",
      no: "neither readings nor signs show a poor joint",
      worse: "yes",
      worked: {
        by: "r1r2-length",
        matter: "resistance-not-above",
        and: [{ by: "zs-agreement", matter: "readings-not-above" }],
        notMet: "yes",
      },
    }),
  },
  contested: {
    "hidden-screws": {
      question: "Screw terminals that nobody can check, with good readings: improvement or danger?",
      positions: {
        improve: {
          words: "with good readings a hidden screw joint is to be improved",
          because: "nothing shows that it is loose, and its enclosure holds",
        },
        "heavy-danger": {
          words: "where it carries heavy load it is a step from a fire",
          because: "screws loosen with every heating, and nobody will see it",
        },
      },
    },
  },
  paths: [
    {
      id: "hidden-fire",
      hazard: "burns-or-fire",
      route: "the joint loosens, heats unseen and sets fire to the building",
      exists: any(yes("poor-joint"), all(is("kind", "screw"), is("access", "lift-floor", "buried"))),
      layers: [
        {
          id: "tight",
          provision: "thermal-protection",
          words: "a joint that stays tight",
          gone: any(yes("poor-joint"), all(held("hidden-screws", "heavy-danger"), is("load", "heavy"))),
          sound: NEVER,
          regulations: ["526.1"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure of the joint", ["526.5"]),
      ],
    },
  ],
  departures: [
    {
      when: all(is("kind", "screw"), is("access", "lift-floor", "buried")),
      words: "a joint that needs inspection cannot be got at",
      regulations: ["526.3"],
    },
  ],
  client: {
    C2: [
      says(
        "A cable joint that is hard to get at is going bad or carries a heavy load. It could start a fire. Have it replaced soon.",
        is("access", "lift-floor", "buried"),
      ),
      says("A cable joint is going bad. It could start a fire. Have it mended soon.", yes("poor-joint")),
    ],
    C3: "A cable joint is hidden where its screws are hard to check. It shows no fault now. It should be moved or remade.",
    FI: [
      unsure(
        "A cable joint is hidden. We could not find out how good it is. It must be looked at.",
        ["poor-joint", "kind", "load"],
        is("access", "lift-floor", "buried"),
      ),
      unsure("We could not find out how good a cable joint is. It must be looked at.", [
        "poor-joint",
        "kind",
        "access",
        "load",
      ]),
    ],
    none: "The cable joints can be reached, or are of a lasting kind.",
  },
  remedies: [
    { words: "Make a trap or bring the joint to a place that can be got at.", changes: { access: "free" } },
    {
      words: "Remake it in a lasting way, or run one length of cable without a joint.",
      changes: { kind: "lasting", "poor-joint": "no" },
    },
  ],
  examples: [
    {
      name: "screw box under a floor, lighting, good readings",
      facts: { kind: "screw", access: "lift-floor", load: "light", "poor-joint": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 526.3",
    },
    {
      name: "shower cable joined with screws under a tiled floor, held to be dangerous",
      facts: { kind: "screw", access: "buried", load: "heavy", "poor-joint": false },
      positions: { "hidden-screws": "heavy-danger" },
      possible: ["C2"],
      source: "trade discussion of hidden joints",
    },
    {
      name: "reading 0.4 Ω above what the length gives",
      facts: { kind: "screw", access: "buried", load: "heavy", "poor-joint": true },
      possible: ["C2"],
      source: "arithmetic: 30 A through 0.4 Ω heats with 360 W",
    },
    {
      name: "crimped and sleeved in plaster",
      facts: { kind: "lasting", access: "buried", "poor-joint": false },
      possible: ["none"],
      source: "regulation 526.3",
    },
    {
      name: "circuit too short on access to measure",
      facts: {
        kind: "screw",
        access: "buried",
        load: "light",
        "poor-joint": { notKnown: "limited", reason: "circuit could not be switched off" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over what readings would show",
    },
    {
      name: "kind of joint not known",
      facts: { access: "buried", load: "light", "poor-joint": false },
      possible: ["none", "C3"],
      missing: ["kind"],
      source: "union over the kind of joint",
    },
  ],
});
