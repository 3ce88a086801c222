import { all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Agricultural and horticultural premises: RCDs, bonding where livestock stand, damage and dust. */
export const farmProtection = topic({
  id: "farm-protection",
  title: "Farm building: RCDs, bonding and damage",
  group: "special",
  items: ["special.farms"],
  facts: {
    "rcd-socket": yesNo({
      asks: "Are all socket-outlets up to 32 A behind 30 mA RCDs that work, and larger ones behind 100 mA?",
      effort: "glance",
      yes: "socket-outlets are behind working RCDs as asked",
      no: "socket-outlets are without the working RCDs asked for",
      worse: "no",
    }),
    "rcd-fire": yesNo({
      asks: "Are all other circuits behind a working RCD of 300 mA or less, against fire?",
      effort: "glance",
      yes: "a working RCD of 300 mA or less guards the circuits against fire",
      no: "no working RCD of 300 mA or less guards the circuits against fire",
      worse: "no",
    }),
    livestock: yesNo({
      asks: "Do animals stand where metal and floor can be touched together?",
      effort: "glance",
      yes: "animals stand where they touch metal and floor together",
      no: "no animals are kept there",
      worse: "yes",
    }),
    bonding: yesNo({
      asks: "Is metal the animals can touch joined by supplementary bonding?",
      effort: "measured",
      yes: "metal within reach of the animals is bonded",
      no: "metal within reach of the animals is not bonded",
      worse: "no",
      worked: { by: "bonding-continuity", notMet: "no", findings: "none" },
    }),
    damage: ranked({
      asks: "What have animals, vehicles, dust or damp done to cables and enclosures?",
      effort: "glance",
      values: {
        sound: "cables and enclosures are sound and out of harm's way",
        exposed: "cables or enclosures stand where animals or vehicles will reach them",
        damaged: "cables or enclosures are damaged, or full of dust or damp",
        "live-parts": "live parts can be touched",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "outdoor-tools",
      hazard: "contact-with-live-parts",
      route: "a lead or tool in the yard is damaged and somebody touches a live part",
      exists: no("rcd-socket"),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of the lead or tool", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: no("rcd-socket"),
          sound: NEVER,
          regulations: ["705.411.1"],
        },
      ],
    },
    {
      id: "livestock-shock",
      hazard: "shock-under-fault",
      route: "animals, or people among them, bridge a voltage between metal and floor",
      exists: yes("livestock"),
      layers: [
        {
          id: "bonding",
          provision: "equipotential-bonding",
          words: "bonding of the metal within reach",
          gone: no("bonding"),
          sound: yes("bonding"),
          regulations: ["705.415.2.1"],
        },
        oneEventAway("no-fault", "fault-protection", "an installation and supply without a fault", ["411.3.2"]),
      ],
    },
    {
      id: "damage",
      hazard: "contact-with-live-parts",
      route: "damage by animals, vehicles or damp bares live parts",
      exists: is("damage", "damaged", "live-parts"),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "cables and enclosures that still keep live parts covered",
          gone: is("damage", "live-parts"),
          sound: NEVER,
          regulations: ["705.512.2", "522.6.1"],
        },
      ],
    },
    {
      id: "fire",
      hazard: "burns-or-fire",
      route: "a leakage current through dirt or damaged insulation sets dust or straw alight",
      exists: no("rcd-fire"),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "clean, sound insulation",
          gone: is("damage", "damaged", "live-parts"),
          sound: NEVER,
          regulations: ["705.422.8"],
        },
        oneEventAway("surroundings", "surroundings", "surroundings that do not catch fire at once"),
      ],
    },
  ],
  departures: [
    {
      when: any(
        no("rcd-socket"),
        no("rcd-fire"),
        all(yes("livestock"), no("bonding")),
        is("damage", "exposed", "damaged", "live-parts"),
      ),
      words: "protection of the farm building is not what its section asks for",
      regulations: ["705.411.1", "705.415.2.1", "705.422.7", "705.522"],
    },
  ],
  client: {
    C1: "Live parts can be touched in the farm building. Keep people and animals away and switch it off now.",
    C2: "The power in the farm building could hurt people or animals, or start a fire. Have it put right soon.",
    C3: [
      says("The power in the farm building is safe now, but it lacks safety switches asked for today.", no("rcd-fire")),
      "Cables or boxes in the farm building stand where they may be hurt. They are safe now. Have them guarded.",
    ],
    FI: unsure("We could not find out if the power in the farm building is safe. It must be looked at soon.", [
      "rcd-socket",
      "rcd-fire",
      "livestock",
      "bonding",
      "damage",
    ]),
    none: "The power in the farm building is as it should be.",
  },
  remedies: [
    {
      words: "Fit RCDs: 30 mA for socket-outlets, 300 mA or less for the rest.",
      changes: { "rcd-socket": "yes", "rcd-fire": "yes" },
    },
    { words: "Bond the metal within the animals' reach and measure it.", changes: { bonding: "yes" } },
    { words: "Replace what is damaged and put it out of reach.", changes: { damage: "sound" } },
  ],
  examples: [
    {
      name: "yard sockets without RCD",
      facts: { "rcd-socket": false, "rcd-fire": true, livestock: false, damage: "sound" },
      possible: ["C2"],
      source: "trade practice; 705.411.1",
    },
    {
      name: "only the RCD against fire is missing, all sound",
      facts: { "rcd-socket": true, "rcd-fire": false, livestock: false, damage: "sound" },
      possible: ["C3"],
      source: "trade practice; 705.422.7",
    },
    {
      name: "cattle stall without bonding",
      facts: { "rcd-socket": true, "rcd-fire": true, livestock: true, bonding: false, damage: "sound" },
      possible: ["C2"],
      source: "705.415.2.1",
    },
    {
      name: "bonding not measured",
      facts: { "rcd-socket": true, "rcd-fire": true, livestock: true, damage: "sound" },
      possible: ["none", "C2"],
      missing: ["bonding"],
      source: "union over what a test would show",
    },
  ],
});
