import { all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Fixed equipment, luminaires and fans inside the zones of a room with a bath or shower. */
export const bathEquipmentInZone = topic({
  id: "bath-equipment-in-zone",
  title: "Equipment unsuited to its bathroom zone",
  group: "baths",
  items: ["bathrooms.ip", "bathrooms.equipment"],
  facts: {
    zone: ranked({
      asks: "In which zone is it?",
      effort: "glance",
      values: {
        outside: "it is outside the zones",
        "zone-2": "it is in zone 2",
        "zone-1": "it is in zone 1",
        "zone-0": "it is in zone 0, in the tub or tray",
      },
    }),
    suited: yesNo({
      asks: "Is it of a kind allowed in this zone, and closed against water as the zone asks (IPX4; IPX7 in zone 0)?",
      effort: "glance",
      yes: "it is of a kind allowed in this zone and closed against water as the zone asks",
      no: "it is not allowed in this zone, or not closed against water as the zone asks",
      worse: "no",
    }),
    voltage: ranked({
      asks: "At what voltage does it work?",
      effort: "glance",
      values: {
        selv: "it works at extra-low voltage from a safe source outside the zones",
        mains: "it works at mains voltage",
      },
    }),
    wetted: ranked({
      asks: "Does water get to it?",
      effort: "glance",
      values: {
        dry: "it stays dry in use",
        sprayed: "spray or condensing steam gets to it",
        "water-inside": "water, rust or water marks are inside it",
      },
    }),
  },
  contested: {
    "over-the-shower": {
      question: "In zone 1 and dry, without a trace of water: does the zone alone make water foreseeable?",
      positions: {
        "zone-counts": {
          words: "in zone 1 water is to be expected, trace or not",
          because: "that is what the zone stands for, and a hand shower is pointed anywhere",
        },
        "trace-counts": {
          words: "what has stayed dry, as in a ceiling over a shower, is a departure and no more",
          because: "years of use without a trace show what water does there",
        },
      },
    },
  },
  paths: [
    {
      id: "water-gets-in",
      hazard: "contact-with-live-parts",
      route: "water gets into the equipment and makes what a wet person touches live",
      exists: any(all(no("suited"), is("zone", "zone-2", "zone-1", "zone-0")), is("wetted", "water-inside")),
      layers: [
        {
          id: "voltage",
          provision: "insulation",
          words: "a voltage too low to do harm",
          gone: is("voltage", "mains"),
          sound: NEVER,
          regulations: ["701.414.4.5", "414.1.1"],
        },
        {
          id: "away-from-water",
          provision: "surroundings",
          words: "a place that water does not get to",
          gone: any(
            is("zone", "zone-0"),
            is("wetted", "sprayed", "water-inside"),
            all(is("zone", "zone-1"), held("over-the-shower", "zone-counts")),
          ),
          sound: NEVER,
          regulations: ["701.512.2"],
        },
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the enclosure of the equipment, such as it is",
          gone: all(no("suited"), is("zone", "zone-0")),
          sound: NEVER,
          regulations: ["701.512.2", "701.512.3", "701.55"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("suited"), is("zone", "zone-2", "zone-1", "zone-0")),
      words: "the equipment is not suited to the zone it is in",
      regulations: ["701.512.2", "701.512.3"],
    },
    { when: is("wetted", "water-inside"), words: "water has got into the equipment", regulations: ["512.2.1"] },
  ],
  client: {
    C1: "Something electric is in the bath or shower where it must not be. Do not use the bath until it is taken out.",
    C2: [
      says(
        "Something electric near the bath or shower is not made for wet places. It could give a shock. Change it soon.",
        all(no("suited"), is("zone", "zone-2", "zone-1", "zone-0")),
      ),
      says(
        "Water has got into something electric in the bathroom. It could give a shock. Change it soon.",
        is("wetted", "water-inside"),
      ),
    ],
    C3: [
      says(
        "Something electric near the bath is not quite the right type. It is not a danger now. A better one is advised.",
        all(no("suited"), is("zone", "zone-2", "zone-1", "zone-0")),
      ),
      says(
        "Water has got into something electric in the bathroom. It is not a danger now. Have it changed.",
        is("wetted", "water-inside"),
      ),
    ],
    FI: unsure(
      "We could not find out if something electric near the bath is made for wet places. This must be looked at soon.",
      ["zone", "suited", "voltage", "wetted"],
    ),
    none: "The electric items near the bath or shower are suited to it.",
  },
  remedies: [
    { words: "Replace it by one made for the zone.", changes: { suited: "yes", wetted: "dry" } },
    { words: "Move it out of the zones.", changes: { zone: "outside", wetted: "dry" } },
  ],
  examples: [
    {
      name: "open luminaire in zone 2, dry",
      facts: { zone: "zone-2", suited: false, voltage: "mains", wetted: "dry" },
      possible: ["C3"],
      source: "trade practice: below IPX4, water not to be expected",
    },
    {
      name: "open luminaire in zone 2 that steam condenses on",
      facts: { zone: "zone-2", suited: false, voltage: "mains", wetted: "sprayed" },
      possible: ["C2"],
      source: "trade practice: water to be expected",
    },
    {
      name: "mains fan below IPX4 in zone 1 over the shower",
      facts: { zone: "zone-1", suited: false, voltage: "mains" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water to be expected",
    },
    {
      name: "downlight below IPX4 in a ceiling at 2.15 m over a shower, dry",
      facts: { zone: "zone-1", suited: false, voltage: "mains", wetted: "dry" },
      possible: ["C2"],
      source: "trade practice: water to be expected in zone 1",
    },
    {
      name: "the same where only a trace of water counts",
      facts: { zone: "zone-1", suited: false, voltage: "mains", wetted: "dry" },
      positions: { "over-the-shower": "trace-counts" },
      possible: ["C3"],
      source: "trade discussion of lights in a ceiling over a shower",
    },
    {
      name: "extra-low voltage fan over the shower, enclosure below IPX4",
      facts: { zone: "zone-1", suited: false, voltage: "selv", wetted: "dry" },
      possible: ["C3"],
      source: "trade practice: no harm from the voltage",
    },
    {
      name: "mains lamp in the tub",
      facts: { zone: "zone-0", suited: false, voltage: "mains" },
      possible: ["C1"],
      classification: "C1",
      source: "regulation: nothing stands between water and mains",
    },
    {
      name: "luminaire outside the zones",
      facts: { zone: "outside", suited: false, voltage: "mains", wetted: "dry" },
      possible: ["none"],
      source: "regulation: no rule of the zones applies",
    },
    {
      name: "marking not read",
      facts: { zone: "zone-1", voltage: "mains", wetted: "dry" },
      possible: ["none", "C2"],
      missing: ["suited"],
      source: "union over the marking",
    },
  ],
});
