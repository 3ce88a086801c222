import { ALWAYS, all, any, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HOT_NOW, HOT_NOW_TOLD, heatAtIntake } from "./facts.ts";

/** The isolator between meter and board: missing, damaged, or not fit for its place. */
export const originIsolator = topic({
  id: "origin-isolator",
  title: "Isolator between meter and board",
  group: "intake",
  items: ["intake.isolator"],
  facts: {
    state: ranked({
      asks: "What about an isolator between meter and board?",
      effort: "glance",
      values: {
        sound: "it is there and whole",
        "not-there": "there is none",
        cracked: "its case is cracked or loose, and nothing live can be touched",
        open: "live metal of it can be touched",
      },
    }),
    "main-switch": yesNo({
      asks: "Can the whole installation be isolated by a linked main switch elsewhere, as near the origin as practicable?",
      effort: "glance",
      yes: "a linked main switch near the origin isolates the installation",
      no: "no linked main switch near the origin isolates the installation",
      worse: "no",
    }),
    "rating-suits": yesNo({
      asks: "Is its rating at least that of the main fuse, or of what limits the load after it?",
      effort: "glance",
      yes: "its rating is at least that of the fuse or of what limits the load, or there is none to rate",
      no: "its rating is below the main fuse, and nothing limits the load to it",
      worse: "no",
    }),
    heat: heatAtIntake({
      asks: "Are its terminals or case scorched or discoloured?",
      effort: "glance",
      none: "it shows no sign of heat",
      marks: "it shows signs of heat",
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal of the isolator",
      exists: is("state", "cracked", "open"),
      layers: [
        {
          id: "case",
          provision: "barrier-or-enclosure",
          words: "the case of the isolator",
          gone: is("state", "open"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
    {
      id: "cannot-switch-off",
      hazard: "contact-with-live-parts",
      route: "somebody caught by a shock or a fire, or working here, cannot have the installation switched off",
      exists: no("main-switch"),
      layers: [
        oneEventAway("covers", "barrier-or-enclosure", "the covers of live parts", ["416.2.1"]),
        {
          id: "isolation",
          provision: "isolation",
          words: "a way to isolate the whole installation",
          gone: is("state", "not-there", "cracked", "open"),
          sound: NEVER,
          regulations: ["462.1", "462.1.201"],
        },
      ],
    },
    {
      id: "heat",
      hazard: "burns-or-fire",
      route: "a terminal of the isolator goes on heating until something burns",
      exists: ALWAYS,
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "terminals that stay cool",
          gone: is("heat", "marks", "now"),
          sound: NEVER,
          regulations: ["526.1"],
        },
        oneEventAway("around", "barrier-or-enclosure", "the case, which keeps the heat from what is around it", [
          "421.1.1",
        ]),
      ],
    },
  ],
  departures: [
    {
      when: any(is("state", "cracked", "open"), all(no("main-switch"), is("state", "not-there"))),
      words: "the means of isolation is missing or not whole",
      regulations: ["462.1"],
    },
    {
      when: no("rating-suits"),
      words: "the isolator is not rated for the current that may flow",
      regulations: ["512.1.2", "536.4.202"],
    },
  ],
  dangers: [HOT_NOW],
  client: {
    C1: [
      HOT_NOW_TOLD,
      says(
        "Live metal of the main switch by the meter can be touched. It can kill. Keep away until it is covered.",
        is("state", "open"),
      ),
    ],
    C2: [
      says(
        "The switch by the meter is cracked or loose. You could get a shock. Have it changed soon.",
        is("state", "cracked"),
      ),
      says("The switch by the meter has been hot. It could burn. Have it changed soon.", is("heat", "marks")),
      says(
        "There is no main switch near the meter. You could not turn the power off in time. Have one put in soon.",
        all(is("state", "not-there"), no("main-switch")),
      ),
    ],
    C3: "The switch by the meter is small for the main fuse. It is not a danger now. A larger one is better.",
    FI: [
      unsure("We could not find out if all the power can be turned off. This must be looked at.", [
        "state",
        "main-switch",
      ]),
      unsure("We could not find out if the switch by the meter has been hot. This must be looked at.", ["heat"]),
    ],
    none: "The power here can be turned off as it should be.",
  },
  remedies: [
    { words: "Replace the isolator; the supplier or distributor isolates.", changes: { state: "sound", heat: "none" } },
    {
      words: "Replace it by one rated for the main fuse, or put a device after it that limits the load.",
      changes: { "rating-suits": "yes" },
    },
    {
      words: "Fit a linked main switch as near the origin as practicable.",
      changes: { "main-switch": "yes" },
    },
  ],
  examples: [
    {
      name: "no isolator, main switch in the board beside the meter",
      facts: { state: "not-there", "main-switch": true, "rating-suits": true, heat: "none" },
      possible: ["none"],
      source: "regulation 462.1.201: the main switch is what is asked for",
    },
    {
      name: "cover of the isolator broken out, terminals in reach",
      facts: { state: "open", "main-switch": true, "rating-suits": true, heat: "none" },
      possible: ["C1"],
      source: "trade practice: live parts in reach",
    },
    {
      name: "80 A isolator on a 100 A fuse",
      facts: { state: "sound", "main-switch": true, "rating-suits": false, heat: "none" },
      possible: ["C3"],
      source: "regulation 512.1.2",
    },
    {
      name: "two boards behind a connector block, no common switch and none at one of them",
      facts: { state: "not-there", "main-switch": false, "rating-suits": true, heat: "none" },
      possible: ["C2"],
      source: "regulation 462.1.201",
    },
    {
      name: "scorched",
      facts: { state: "sound", "main-switch": true, "rating-suits": true, heat: "marks" },
      possible: ["C2"],
      source: "trade practice: signs of heat",
    },
    {
      name: "behind a locked door",
      facts: { "main-switch": true },
      possible: ["none", "C3", "C2", "C1"],
      missing: ["state", "heat"],
      source: "union over its state",
    },
  ],
});
