import { ALWAYS, all, any, held, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { DISTANCE } from "../contested.ts";
import { oneEventAway, topic } from "../topic.ts";

/** A joint without a closed enclosure: an open junction box, a connector strip in the open, taped ends in a void. */
export const jointNotEnclosed = topic({
  id: "joint-not-enclosed",
  title: "Joint outside a closed enclosure",
  group: "cables",
  items: ["circuits.terminations", "circuits.unsheathed"],
  facts: {
    enclosure: ranked({
      asks: "What is around the joint?",
      effort: "glance",
      values: {
        closed: "the joint is in a closed enclosure with its cover fixed",
        "cover-off": "the joint is in a box whose cover is missing or broken",
        none: "the joint has no enclosure",
      },
    }),
    terminals: ranked({
      asks: "Can a finger touch live metal at the joint?",
      effort: "glance",
      values: {
        shrouded: "a finger touches no live metal: every terminal is shrouded, or a fixed cover is over it",
        taped: "live metal is covered by tape only",
        bare: "live metal can be touched at the joint",
      },
    }),
    place: ranked({
      asks: "Where is it?",
      effort: "glance",
      values: {
        closed: "it lies in a void that is reached with a tool or by taking a fitting down",
        "seldom-entered": "it lies in a loft or under a floor that people seldom enter",
        "above-reach": "it lies above arm's reach where people come",
        "in-reach": "it lies within reach of people, as in a loft used for storage",
      },
    }),
    combustible: yesNo({
      asks: "Does something that burns lie against it: timber, insulation, dust, stored goods?",
      effort: "glance",
      yes: "something that burns lies against it",
      no: "nothing that burns lies against it",
      worse: "yes",
    }),
    connection: ranked({
      asks: "What is the connection itself like?",
      effort: "opened",
      values: {
        tight: "the connection is tight and without marks, and the cables do not pull on it",
        doubtful: "the connection is loose, twisted, scorched, or pulled by its cables",
      },
    }),
  },
  contested: {
    distance: DISTANCE,
    "open-in-void": {
      question: "A tight shrouded joint without a box, against timber in a void: how near is a fire?",
      positions: {
        danger: {
          words: "with no enclosure, one loose screw is enough for a fire",
          because: "526.5 wants the enclosure because joints are where heat starts",
        },
        improve: {
          words: "a tight joint that has shown no heat is to be improved",
          because: "a loose joint would be a further event, and none is in sight",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal at the joint",
      exists: is("enclosure", "cover-off", "none"),
      layers: [
        {
          id: "terminals",
          provision: "insulation",
          words: "the insulation of the joint itself",
          gone: is("terminals", "bare"),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "place",
          provision: "barrier-or-enclosure",
          words: "a place that hands do not get to",
          gone: any(
            is("place", "in-reach"),
            all(is("place", "above-reach"), is("terminals", "bare"), held("distance", "does-not-count")),
          ),
          sound: NEVER,
          regulations: ["416.2.1", "526.5"],
        },
      ],
    },
    {
      id: "fire",
      hazard: "burns-or-fire",
      route: "the joint heats or sparks and sets fire to what is around it",
      exists: ALWAYS,
      layers: [
        {
          id: "heat-kept-in",
          provision: "thermal-protection",
          words: "a tight joint, with an enclosure or clear space to keep its heat in",
          gone: any(
            is("connection", "doubtful"),
            all(is("enclosure", "cover-off", "none"), yes("combustible"), held("open-in-void", "danger")),
          ),
          sound: NEVER,
          regulations: ["526.1", "526.5"],
        },
        oneEventAway("surroundings", "surroundings", "surroundings that have not caught so far", ["421.1.2"]),
      ],
    },
  ],
  departures: [
    {
      when: is("enclosure", "cover-off", "none"),
      words: "a joint is not in a suitable enclosure",
      regulations: ["526.5"],
    },
    {
      when: any(is("terminals", "taped", "bare"), is("connection", "doubtful")),
      words: "a joint is not insulated or not tight in a lasting way",
      regulations: ["526.1", "526.2"],
    },
  ],
  dangers: [
    {
      id: "live-metal",
      least: "C2",
      when: is("terminals", "bare"),
      words: "live metal can be touched at the joint",
      regulations: ["416.1", "526.5"],
    },
  ],
  client: {
    C1: "A cable joint is open and live metal shows. It can kill. Keep away until it is closed in.",
    C2: [
      says(
        "Live metal shows at a cable joint. It could give a shock or start a fire. Have it closed in soon.",
        is("terminals", "bare"),
      ),
      says(
        "A cable joint has no closed box. It could give a shock or start a fire. Have it closed in soon.",
        is("enclosure", "cover-off", "none"),
      ),
      says(
        "A cable joint is loose or strained. It could get hot and start a fire. Have it mended soon.",
        is("connection", "doubtful"),
      ),
    ],
    C3: [
      says(
        "A cable joint has no closed box. It is out of the way and tight. A closed box would be safer.",
        all(is("enclosure", "cover-off", "none"), is("place", "closed", "seldom-entered")),
      ),
      "A cable joint is not made in a lasting way. It is not a danger now. It should be made better.",
    ],
    FI: unsure(
      "We could not see how some cable joints are made. They could get hot or give a shock. They must be looked at.",
      ["enclosure", "terminals", "connection", "place", "combustible"],
    ),
    none: "The cable joints are closed in as they should be.",
  },
  remedies: [
    { words: "Fit the missing cover.", changes: { enclosure: "closed", terminals: "shrouded" } },
    {
      words: "Remake the joint in a closed enclosure with the cables held.",
      changes: { enclosure: "closed", terminals: "shrouded", connection: "tight" },
    },
  ],
  examples: [
    {
      name: "junction box without cover, terminals bare, at head height",
      facts: { enclosure: "cover-off", terminals: "bare", place: "in-reach", connection: "tight", combustible: false },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: live metal within reach",
    },
    {
      name: "connector strip in a loft on timber",
      facts: {
        enclosure: "none",
        terminals: "shrouded",
        place: "seldom-entered",
        connection: "tight",
        combustible: true,
      },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion: unenclosed joint against combustible material",
    },
    {
      name: "the same held to be an improvement",
      facts: {
        enclosure: "none",
        terminals: "shrouded",
        place: "seldom-entered",
        connection: "tight",
        combustible: true,
      },
      positions: { "open-in-void": "improve" },
      possible: ["C3"],
      source: "trade discussion of joints in voids",
    },
    {
      name: "connector strip in a metal void, tight",
      facts: { enclosure: "none", terminals: "shrouded", place: "closed", connection: "tight", combustible: false },
      possible: ["C3"],
      source: "regulation 526.5",
    },
    {
      name: "box closed, joint tight",
      facts: { enclosure: "closed", terminals: "shrouded", connection: "tight" },
      possible: ["none"],
      source: "regulation 526.5",
    },
    {
      name: "joint in a void not seen",
      facts: {
        place: "closed",
        combustible: true,
        terminals: "shrouded",
        enclosure: { notKnown: "limited", reason: "ceiling not opened" },
        connection: { notKnown: "limited", reason: "ceiling not opened" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what is in the void",
    },
    {
      name: "joint not opened",
      facts: { enclosure: "closed", terminals: "shrouded" },
      possible: ["none", "C2"],
      missing: ["connection"],
      source: "union over the state of the joint",
    },
  ],
});
