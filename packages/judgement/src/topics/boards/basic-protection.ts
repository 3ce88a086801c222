import { ALWAYS, all, any, held, is, NEVER, no, not, says, unsure, yes } from "@good-grounds/core";
import { COVERING_LAYER, DISTANCE_LAYER, stateIs, TOUCH_FACTS, TOUCH_POINTS } from "../shared/index.ts";
import { AROUND_GONE, AROUND_HOLDS, FAILED_BEHIND } from "../shared/states/basic-protection.ts";
import { topic } from "../topic.ts";

/** Covered by more than insulation alone, so that nothing has to be around it. */
const NEEDS_MORE = is("covering", "basic-sound", "basic-damaged", "bare");
/** What is around it is what keeps people off, and not distance in a place of skilled persons. */
const ENCLOSURE_COUNTS = all(NEEDS_MORE, not(stateIs(DISTANCE_LAYER, "holds")));

/** What stands between any live metal and a person: the state that every route of touch rests on, usable alone. */
export const basicProtection = topic({
  id: "basic-protection",
  title: "What stands between live metal and a person",
  group: "boards",
  items: ["boards.enclosure", "circuits.unsheathed", "accessories.condition"],
  facts: TOUCH_FACTS,
  contested: TOUCH_POINTS,
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal",
      exists: ALWAYS,
      layers: [
        {
          id: "covering",
          provision: "insulation",
          words: "what covers the live part",
          gone: stateIs(COVERING_LAYER, "gone"),
          sound: stateIs(COVERING_LAYER, "holds"),
          regulations: ["416.1", "412.1.1"],
        },
        {
          id: "around",
          provision: "barrier-or-enclosure",
          words: "what is around it: an enclosure, distance or an obstacle under skilled control, a locked place",
          gone: any(
            AROUND_GONE,
            all(is("covering", "basic-damaged"), no("wet-or-conductive"), any(not(AROUND_HOLDS), FAILED_BEHIND)),
            all(is("covering", "basic-sound"), is("wears", "moved", "heat-weather-rodents"), not(AROUND_HOLDS)),
          ),
          sound: all(AROUND_HOLDS, not(FAILED_BEHIND)),
          regulations: ["416.2.1", "416.2.3", "416.2.4", "417.1"],
        },
        {
          id: "at-rest",
          provision: "surroundings",
          words: "sound insulation in a place where nothing acts on it",
          gone: not(all(is("covering", "basic-sound"), is("wears", "nothing"), held("open-cores", "improve"))),
          sound: NEVER,
          regulations: ["522.6.1", "522.8.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("covering", "basic-sound"), not(AROUND_HOLDS)),
      words: "conductors with basic insulation alone are not enclosed",
      regulations: ["521.10.1"],
    },
    {
      when: all(is("covering", "basic-damaged", "bare"), yes("meant-insulated")),
      words: "insulation is damaged or gone",
      regulations: ["416.1", "134.1.1"],
    },
    {
      when: all(ENCLOSURE_COUNTS, is("gets-in", "wire-on-top", "finger", "hand"), no("allowed-opening")),
      words: "what is around it lets in a finger, or on top a wire of 1 mm",
      regulations: ["416.2.1", "416.2.2"],
    },
    {
      when: all(ENCLOSURE_COUNTS, any(not(is("fixing", "whole")), no("hinges-carry"))),
      words: "what is around it is not whole and firmly held",
      regulations: ["416.2.3"],
    },
  ],
  client: {
    C1: "Nothing keeps people away from live metal here. A touch can kill. Keep away. It must be made safe today.",
    C2: [
      says(
        "Bare live metal is kept away from people by one thing only. If that gives way, it can give a shock. Fix it soon.",
        all(is("covering", "bare"), not(AROUND_HOLDS)),
      ),
      says(
        "The cover of a live wire is damaged. It could give a shock when it gets worse. Fix it soon.",
        is("covering", "basic-damaged"),
      ),
      "Only one thing keeps people from a shock here. If it gives way, live metal can be touched. Fix it soon.",
    ],
    C3: "Live metal is kept away from people. Something about it is not as it should be. A repair would be good.",
    FI: [
      unsure("We could not find out what covers a live part. It could give a shock. It must be looked at soon.", [
        "covering",
        "meant-insulated",
        "wears",
      ]),
      unsure("We could not find out who can get to a live part. It could give a shock. It must be looked at soon.", [
        "who-comes",
      ]),
      unsure(
        "We could not find out how well a live part is shut away. It could give a shock. It must be looked at soon.",
        Object.keys(TOUCH_FACTS),
      ),
    ],
    none: "Live metal is kept away from people as it should be.",
  },
  remedies: [
    {
      words: "Clear away what is stored or moved beside it, and keep knocks, heat and wet off.",
      changes: { wears: "nothing" },
    },
    {
      words:
        "Close it up: refit or replace what is missing, with all its fixings, so that a tool is needed to open it.",
      changes: {
        "gets-in": "nothing",
        fixing: "whole",
        "hinges-carry": "yes",
        opens: "tool",
        "lock-works": "yes",
      },
    },
    {
      words: "Fit a barrier behind the door that takes a tool, and close its gaps.",
      changes: { "gets-in": "nothing", "barrier-behind": "yes" },
    },
    {
      words: "Repair or replace the lock, and leave the key with skilled persons only.",
      changes: { "lock-works": "yes", "who-comes": "skilled-only" },
    },
    {
      words: "Renew what is damaged or bare: cut back and rejoin in an enclosure, or replace it by sheathed cable.",
      changes: { covering: "sheathed" },
    },
  ],
  examples: [
    {
      name: "bare bar, nothing around, anyone comes",
      facts: { covering: "bare", "gets-in": "hand", "arms-reach": "within", obstacle: "none", "who-comes": "anyone" },
      possible: ["C1"],
      classification: "C1",
      source: "regulations 416.1 and 416.2.1",
    },
    {
      name: "single-insulated tails behind a door that shuts, prams rub them",
      facts: {
        covering: "basic-sound",
        wears: "moved",
        "gets-in": "nothing",
        fixing: "whole",
        "hinges-carry": true,
        opens: "hand",
        "allowed-opening": false,
        "barrier-behind": false,
        "who-comes": "anyone",
        "arms-reach": "within",
        obstacle: "none",
      },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 522.8.1: the door is no help against what is inside",
    },
    {
      name: "bars behind a rail, anyone enters",
      facts: {
        covering: "bare",
        "gets-in": "hand",
        "who-comes": "anyone",
        "arms-reach": "within",
        obstacle: "secured",
        "wet-or-conductive": false,
      },
      possible: ["C1"],
      source: "regulation 417.1: an obstacle is no measure where ordinary persons come",
    },
    {
      name: "the same, an obstacle held to count",
      facts: {
        covering: "bare",
        "gets-in": "hand",
        "who-comes": "anyone",
        "arms-reach": "within",
        obstacle: "secured",
        "wet-or-conductive": false,
      },
      positions: { distance: "counts" },
      possible: ["C2"],
      source: "trade discussion of obstacles",
    },
    {
      name: "double insulation",
      facts: { covering: "double-or-reinforced" },
      possible: ["none"],
      classification: "none",
      source: "chapter 412: a measure by itself",
    },
    {
      name: "busbar behind a cover that takes a tool, one fixing lost",
      facts: {
        covering: "bare",
        "meant-insulated": false,
        "gets-in": "nothing",
        fixing: "slight",
        "hinges-carry": true,
        opens: "tool",
        "who-comes": "anyone",
      },
      possible: ["C3"],
      source: "trade practice: the cover still does its work",
    },
    {
      name: "bare, and nothing more said",
      facts: { covering: "bare" },
      possible: ["none", "C3", "C2", "C1"],
      missing: ["gets-in"],
      source: "union over what is around it",
    },
  ],
});
