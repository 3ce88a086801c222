import { all, any, held, is, NEVER, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A wall switch, pull cord or control inside the zones of a bath or shower. */
export const bathSwitchInReach = topic({
  id: "bath-switch-in-reach",
  title: "Switch in reach of a bath or shower",
  group: "baths",
  items: ["bathrooms.equipment"],
  facts: {
    zone: ranked({
      asks: "In which zone is the switch itself, not its cord?",
      effort: "glance",
      values: {
        outside: "the switch is outside the zones",
        "zone-2": "the switch is in zone 2",
        "zone-1": "the switch is in zone 1",
      },
    }),
    kind: ranked({
      asks: "What kind of switch is it?",
      effort: "glance",
      values: {
        "cord-or-selv": "only its insulating cord is touched, or it is in a circuit of at most 12 V from a safe source",
        "built-in": "it is part of equipment made for this zone",
        wall: "it is an ordinary wall switch at mains voltage",
      },
    }),
    wetted: yesNo({
      asks: "Does spray get to it, or is there water or rust in it?",
      effort: "glance",
      yes: "spray gets to it, or water has got in",
      no: "it stays dry",
      worse: "yes",
    }),
  },
  contested: {
    "wet-hands": {
      question: "Is a dry wall switch in zone 2 one step from danger because wet hands use it?",
      positions: {
        counts: {
          words: "a wall switch that a person in the bath can reach is one step from danger",
          because: "it is worked with wet hands, and water runs in behind the rocker",
        },
        "does-not-count": {
          words: "a sound switch that stays dry in zone 2 is a departure and no more",
          because: "nothing conducts to the hand while its plate is whole and dry",
        },
      },
    },
  },
  paths: [
    {
      id: "water-in-switch",
      hazard: "contact-with-live-parts",
      route: "water gets into the switch and a wet person touches it",
      exists: any(all(is("kind", "wall"), is("zone", "zone-2", "zone-1")), yes("wetted")),
      layers: [
        {
          id: "plate",
          provision: "barrier-or-enclosure",
          words: "the plate of the switch",
          gone: NEVER,
          sound: NEVER,
          regulations: ["701.512.2", "701.512.3"],
        },
        {
          id: "dry-hands",
          provision: "surroundings",
          words: "a place where neither spray nor wet hands get to it",
          gone: any(is("zone", "zone-1"), yes("wetted"), held("wet-hands", "counts")),
          sound: NEVER,
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("kind", "wall"), is("zone", "zone-2", "zone-1")),
      words: "a switch is in a zone that allows none",
      regulations: ["701.512.3"],
    },
  ],
  client: {
    C2: "A switch can be reached from the bath or shower, or gets wet. It could give a shock. Have it moved soon.",
    C3: "A switch is close to the bath or shower. It stays dry and is safe now. It is better moved.",
    FI: unsure("We could not find out if a switch near the bath is safe. This must be looked at soon.", [
      "zone",
      "kind",
      "wetted",
    ]),
    none: "The bathroom switches are in a safe place.",
  },
  remedies: [
    { words: "Replace it by a pull-cord switch.", changes: { kind: "cord-or-selv", wetted: "no" } },
    { words: "Move it out of the zones.", changes: { zone: "outside", wetted: "no" } },
  ],
  examples: [
    {
      name: "wall switch in zone 2",
      facts: { zone: "zone-2", kind: "wall", wetted: false },
      possible: ["C2"],
      source: "trade practice: switch in reach from the bath",
    },
    {
      name: "the same, taken as dry",
      facts: { zone: "zone-2", kind: "wall", wetted: false },
      positions: { "wet-hands": "does-not-count" },
      possible: ["C3"],
      source: "trade discussion: dry switches in zone 2",
    },
    {
      name: "wall switch in the shower",
      facts: { zone: "zone-1", kind: "wall" },
      positions: { "wet-hands": "does-not-count" },
      possible: ["C2"],
      source: "trade practice: water to be expected",
    },
    {
      name: "pull cord hanging in zone 1, switch on the ceiling",
      facts: { zone: "outside", kind: "cord-or-selv", wetted: false },
      possible: ["none"],
      source: "regulation: insulating cords are allowed",
    },
    {
      name: "wall switch outside the zones, two steps from the basin",
      facts: { zone: "outside", kind: "wall", wetted: false },
      possible: ["none"],
      source: "regulation: no rule forbids it outside the zones",
    },
    {
      name: "zone not measured",
      facts: { kind: "wall", wetted: false },
      possible: ["none", "C2"],
      missing: ["zone"],
      source: "union over zones",
    },
  ],
});
