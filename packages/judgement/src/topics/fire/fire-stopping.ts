import { all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Holes made for cables and fittings through walls, floors and ceilings that hold back fire. */
export const fireStopping = topic({
  id: "fire-stopping",
  title: "Opening for cables or fittings in a fire-resisting wall, floor or ceiling",
  group: "fire",
  items: ["circuits.barriers", "fire.construction"],
  facts: {
    element: ranked({
      asks: "What does the wall, floor or ceiling divide?",
      effort: "glance",
      values: {
        plain: "the wall or floor is not meant to hold back fire",
        "fire-resisting": "the wall or floor is meant to hold back fire",
        "escape-route": "the wall or floor keeps fire from the way out or from another home",
      },
    }),
    opening: ranked({
      asks: "What is not sealed: a gap round one cable, a hole, boxes or lights cut in?",
      effort: "glance",
      values: {
        sealed: "the opening is sealed as well as the wall",
        "single-cable": "a small gap is left round a single cable",
        fittings: "boxes or lights are cut into it without a kind or cover that holds fire back",
        bunch: "an open hole is left round a bunch of cables or containment",
      },
    }),
    detection: yesNo({
      asks: "Would linked alarms warn people on the far side?",
      effort: "glance",
      yes: "linked alarms would warn people on the far side",
      no: "no linked alarm would warn people on the far side",
      worse: "no",
    }),
  },
  contested: {
    "single-gap": {
      question: "Does a small gap round one cable let enough smoke through to matter?",
      positions: {
        improve: {
          words: "a small gap round one cable is to be sealed, and is not potentially dangerous",
          because: "the gap is small against the wall, and there is time to leave",
        },
        matters: {
          words: "it does: any open gap to the way out is potentially dangerous",
          because: "smoke kills first and a gap fills a stair in minutes",
        },
      },
    },
  },
  paths: [
    {
      id: "smoke-passes",
      hazard: "burns-or-fire",
      route: "fire and smoke pass through the opening to people who do not know of it",
      exists: is("element", "fire-resisting", "escape-route"),
      layers: [
        {
          id: "no-fire",
          provision: "surroundings",
          words: "no fire breaking out",
          gone: NEVER,
          sound: NEVER,
        },
        {
          id: "seal",
          provision: "surroundings",
          words: "a wall or floor that holds fire and smoke back",
          gone: any(
            all(is("opening", "fittings", "bunch"), any(is("element", "escape-route"), no("detection"))),
            all(
              is("opening", "single-cable", "fittings", "bunch"),
              is("element", "escape-route"),
              held("single-gap", "matters"),
            ),
          ),
          sound: is("opening", "sealed"),
          regulations: ["527.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("element", "fire-resisting", "escape-route"), is("opening", "single-cable", "fittings", "bunch")),
      words: "the opening for cables or fittings is not sealed",
      regulations: ["527.2.1"],
    },
  ],
  client: {
    C2: "There is a hole in a wall or ceiling that should hold back fire. Smoke could pass. Have it sealed soon.",
    C3: [
      says(
        "There is a small gap round a cable in a fire wall. Have it sealed when work is next done.",
        is("opening", "single-cable"),
      ),
      says(
        "There is a hole in a fire wall or ceiling. Alarms would warn people of a fire. Have it sealed soon.",
        is("opening", "fittings", "bunch"),
      ),
    ],
    FI: [
      unsure("We could not see if cable holes in a fire wall are sealed. This must be looked at soon.", [
        "opening",
        "element",
      ]),
      unsure(
        "There is a hole in a fire wall or ceiling. We could not find out if alarms would warn people. This must be looked at soon.",
        ["detection"],
        is("opening", "single-cable", "fittings", "bunch"),
      ),
    ],
    none: "Holes for cables are sealed where they have to be.",
  },
  remedies: [
    { words: "Seal the opening with a tested system for that wall or floor.", changes: { opening: "sealed" } },
  ],
  examples: [
    {
      name: "bunch through the wall between flat and common stair",
      facts: { element: "escape-route", opening: "bunch", detection: true },
      possible: ["C2"],
      source: "trade practice; 527.2.1",
    },
    {
      name: "single small gap, alarms linked",
      facts: { element: "escape-route", opening: "single-cable", detection: true },
      possible: ["C3"],
      source: "trade practice: small single cable gap",
    },
    {
      name: "ceiling void not opened",
      facts: { element: "escape-route", detection: true },
      possible: ["none", "C3", "C2"],
      missing: ["opening"],
      source: "union over what may be there",
    },
  ],
});
