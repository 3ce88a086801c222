import { ALWAYS, all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Direct-current cables and connectors of a photovoltaic array. They cannot be made dead in daylight. */
export const pvCableDamaged = topic({
  id: "pv-cable-damaged",
  title: "Damaged d.c. cable or connector of a photovoltaic array",
  group: "sources",
  items: ["sources.photovoltaic"],
  facts: {
    insulation: ranked({
      asks: "What state are the insulation and sheath of the d.c. cables in?",
      effort: "glance",
      values: {
        sound: "the d.c. cables are sound",
        "sheath-damaged": "the sheath of a d.c. cable is damaged, its insulation whole",
        "conductor-bare": "bare d.c. conductor can be seen",
      },
    }),
    reach: ranked({
      asks: "Who could touch it where it is?",
      effort: "glance",
      values: {
        nobody: "it lies where only a skilled person with a ladder or tool gets",
        possible: "someone could get to it now and then",
        easy: "anyone can touch it",
      },
    }),
    connectors: ranked({
      asks: "Do mating connectors belong together and sit fully home?",
      effort: "glance",
      values: {
        matched: "connectors are of one kind and fully home",
        mixed: "connectors of different kinds are mated, cool and tight",
        overheated: "a connector is loose, melted or discoloured",
      },
    }),
    "rubbing-or-hanging": yesNo({
      asks: "Do cables hang, rub on edges or lie in gutters?",
      effort: "glance",
      yes: "d.c. cables hang, rub or lie in water",
      no: "d.c. cables are held clear of edges and water",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch-dc",
      hazard: "contact-with-live-parts",
      route: "somebody touches a d.c. conductor that is live whenever there is light",
      exists: ALWAYS,
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation and sheath of the d.c. cable",
          gone: is("insulation", "conductor-bare"),
          sound: all(is("insulation", "sound"), no("rubbing-or-hanging")),
          regulations: ["712.521.101", "416.1"],
        },
        {
          id: "place",
          provision: "restricted-access",
          words: "the place, which keeps people away",
          gone: is("reach", "easy"),
          sound: NEVER,
        },
      ],
    },
    {
      id: "dc-arc",
      hazard: "burns-or-fire",
      route: "a d.c. arc starts in the cable or at a connector and does not go out by itself",
      exists: ALWAYS,
      layers: [
        {
          id: "joint",
          provision: "thermal-protection",
          words: "sound joints and insulation, in which no arc starts",
          gone: any(is("connectors", "overheated"), is("insulation", "conductor-bare")),
          sound: all(is("connectors", "matched"), is("insulation", "sound")),
          regulations: ["526.1", "712.421.101"],
        },
        oneEventAway("surroundings", "surroundings", "surroundings that do not catch fire at once"),
      ],
    },
  ],
  departures: [
    {
      when: any(
        is("connectors", "mixed", "overheated"),
        is("insulation", "sheath-damaged", "conductor-bare"),
        yes("rubbing-or-hanging"),
      ),
      words: "d.c. cables or connectors are not selected, fixed or joined as they should be",
      regulations: ["522.8.1", "526.1"],
    },
  ],
  client: {
    C1: "A bare wire of the solar panels can be touched. It is live all day. Keep away and get it made safe now.",
    C2: [
      says(
        "A cable or plug of the solar panels is damaged. It could give a shock or start a fire. Have it put right soon.",
        any(is("insulation", "sheath-damaged", "conductor-bare"), is("connectors", "overheated")),
      ),
      says(
        "A cable of the solar panels hangs or rubs where it can be touched. It could give a shock. Have it put right soon.",
        yes("rubbing-or-hanging"),
      ),
    ],
    C3: "The cables of the solar panels are not fixed or joined as well as they should be. They are not a danger now.",
    FI: unsure(
      "We could not see all cables of the solar panels. A damaged one could be a danger. They must be looked at.",
      ["insulation", "reach", "connectors", "rubbing-or-hanging"],
    ),
    none: "The cables of the solar panels are sound.",
  },
  remedies: [
    { words: "Fix and protect the cables clear of edges and water.", changes: { "rubbing-or-hanging": "no" } },
    {
      words: "Replace damaged cable and mismatched connectors with parts made for each other.",
      changes: { insulation: "sound", connectors: "matched", "rubbing-or-hanging": "no" },
    },
  ],
  examples: [
    {
      name: "bare conductor on a low roof beside a terrace",
      facts: { insulation: "conductor-bare", reach: "easy", connectors: "matched", "rubbing-or-hanging": true },
      possible: ["C1"],
      source: "trade practice: live d.c. conductor in reach",
    },
    {
      name: "melted connector",
      facts: { insulation: "sound", reach: "nobody", connectors: "overheated", "rubbing-or-hanging": false },
      possible: ["C2"],
      source: "trade practice: heat at a d.c. connector",
    },
    {
      name: "different kinds mated, cool",
      facts: { insulation: "sound", reach: "nobody", connectors: "mixed", "rubbing-or-hanging": false },
      possible: ["C3"],
      source: "trade practice: connectors not tested together",
    },
    {
      name: "roof not reached",
      facts: { connectors: "matched" },
      possible: ["none", "C3", "C2", "C1"],
      missing: ["insulation"],
      source: "union over what may be there",
    },
  ],
});
