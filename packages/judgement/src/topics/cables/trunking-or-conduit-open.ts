import { ALWAYS, all, any, held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { DISTANCE } from "../contested.ts";
import { oneEventAway, topic } from "../topic.ts";

/** Trunking or conduit that is open, broken or apart: cores in reach, or metal that no longer carries a fault. */
export const trunkingOrConduitOpen = topic({
  id: "trunking-or-conduit-open",
  title: "Trunking or conduit open or broken",
  group: "cables",
  items: ["circuits.unsheathed", "circuits.support", "circuits.cpc"],
  facts: {
    cover: ranked({
      asks: "Is the trunking or conduit closed along its length?",
      effort: "glance",
      values: {
        closed: "it is closed along its length",
        loose: "a lid or joint is loose and still covers what is inside",
        open: "a lid is missing, or a joint has come apart",
      },
    }),
    contents: ranked({
      asks: "What lies open there?",
      effort: "glance",
      values: {
        sheathed: "nothing lies open, or sheathed cables only",
        cores: "single cores in basic insulation lie there",
        bare: "live metal shows there",
      },
    }),
    place: ranked({
      asks: "Who gets to it?",
      effort: "glance",
      values: {
        away: "it is above arm's reach or where nobody comes without a tool or ladder",
        "in-reach": "people reach it, or things knock against it",
      },
    }),
    metal: ranked({
      asks: "If it is of metal: does every length read continuous to earth?",
      effort: "measured",
      values: {
        "not-metal": "it is not of metal",
        continuous: "every length of the metal reads continuous to earth",
        apart: "a length of the metal has no sound path to earth",
      },
    }),
  },
  contested: { distance: DISTANCE },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches or damages what lies open",
      exists: is("cover", "loose", "open"),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the conductors",
          gone: is("contents", "bare"),
          sound: is("contents", "sheathed"),
          regulations: ["416.1"],
        },
        {
          id: "cover",
          provision: "barrier-or-enclosure",
          words: "a lid, or a place that hands do not get to",
          gone: all(
            is("cover", "open"),
            any(is("place", "in-reach"), all(is("contents", "bare"), held("distance", "does-not-count"))),
          ),
          sound: NEVER,
          regulations: ["521.10.1", "416.2.1"],
        },
      ],
    },
    {
      id: "metal-live",
      hazard: "shock-under-fault",
      route: "a core touches a length of metal that has no path to earth, and somebody touches the metal",
      exists: is("metal", "apart"),
      layers: [
        oneEventAway("insulation", "insulation", "the insulation of the cores", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "a path to earth through the metal",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["411.3.1.1", "543.2.5"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("cover", "loose", "open"),
      words: "trunking or conduit does not enclose its conductors",
      regulations: ["521.10.1", "134.1.1"],
    },
    {
      when: is("metal", "apart"),
      words: "a metal enclosure of cables is not earthed along its length",
      regulations: ["411.3.1.1"],
    },
  ],
  dangers: [
    { id: "live-metal", least: "C2", when: is("contents", "bare"), words: "live metal shows", regulations: ["416.1"] },
  ],
  client: {
    C1: "A cover for wires is open and live metal shows. It can kill. Keep away until it is closed.",
    C2: [
      says(
        "Live metal of a wire shows where its cover should be. Somebody could get a shock. Have it mended soon.",
        is("contents", "bare"),
      ),
      "A cover for wires is open, loose or not earthed. Somebody could get a shock. Have it mended soon.",
    ],
    C3: "A cover for wires is open or loose. It is not a danger now. Have it closed.",
    FI: [
      unsure(
        "We could not see if the covers for wires are whole. Somebody could get a shock. This must be looked at.",
        ["cover"],
      ),
      unsure(
        "We could not find out if wires and the cover round them are safe. Somebody could get a shock. This must be looked at.",
        ["contents", "metal", "place"],
      ),
    ],
    none: "The covers for wires are closed as they should be.",
  },
  remedies: [
    { words: "Fit the missing lid, or close the joint.", changes: { cover: "closed" } },
    {
      words: "Cut out or insulate afresh what is bare, and fit the lid.",
      changes: { cover: "closed", contents: "cores" },
    },
    {
      words: "Restore the path to earth across the joint and read it.",
      changes: { metal: "continuous", cover: "closed" },
    },
  ],
  examples: [
    {
      name: "lid missing at bench height, single cores",
      facts: { cover: "open", contents: "cores", place: "in-reach", metal: "not-metal" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: basic insulation in reach; regulation 521.10.1",
    },
    {
      name: "lid missing near a high ceiling, single cores",
      facts: { cover: "open", contents: "cores", place: "away", metal: "not-metal" },
      possible: ["C3"],
      source: "trade practice: no likely damage",
    },
    {
      name: "mini-trunking without lid, sheathed cable",
      facts: { cover: "open", contents: "sheathed", place: "in-reach", metal: "not-metal" },
      possible: ["C3"],
      source: "trade practice: the sheath holds",
    },
    {
      name: "steel conduit apart at a coupler",
      facts: { cover: "closed", metal: "apart" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: exposed metal without fault protection",
    },
    {
      name: "bare live metal in an open trunking within reach",
      facts: { cover: "open", contents: "bare", place: "in-reach" },
      possible: ["C1"],
      source: "trade practice: live metal in reach",
    },
    {
      name: "continuity of the conduit not measured",
      facts: { cover: "closed", contents: "sheathed", metal: { notKnown: "limited", reason: "no dead test agreed" } },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over continuity",
    },
    {
      name: "contents not looked at",
      facts: { cover: "open", place: "away", metal: "not-metal" },
      possible: ["C3", "C1"],
      missing: ["contents"],
      source: "union over the contents",
    },
  ],
});
