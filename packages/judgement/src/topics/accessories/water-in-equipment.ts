import { all, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Water that has got into a light, an accessory or a joint box indoors, as from a leak above. */
export const waterInEquipment = topic({
  id: "water-in-equipment",
  title: "Water in a light, accessory or box indoors",
  group: "accessories",
  items: ["accessories.condition", "accessories.fixed-equipment"],
  facts: {
    water: ranked({
      asks: "What has water done to it?",
      effort: "glance",
      values: {
        none: "there is no water or mark of water in it",
        "dry-marks": "there are old water marks, and it is dry",
        damp: "it is damp, or its terminals are corroded",
        "running-in": "water drips from it or stands in it",
      },
    }),
    "source-stopped": yesNo({
      asks: "Has the leak been found and stopped?",
      effort: "opened",
      yes: "the leak has been found and stopped",
      no: "the leak may come back",
      worse: "no",
    }),
    circuit: ranked({
      asks: "Is the circuit on?",
      effort: "glance",
      values: {
        "locked-off": "the circuit has been made dead and locked off",
        "in-service": "the circuit is in service",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "wet",
      hazard: "contact-with-live-parts",
      route: "water bridges live parts, and what somebody touches becomes live or burns",
      exists: any(is("water", "damp", "running-in"), all(is("water", "dry-marks"), no("source-stopped"))),
      layers: [
        {
          id: "dry",
          provision: "barrier-or-enclosure",
          words: "an enclosure that has kept water off live parts, or a lock on the dead circuit",
          gone: all(is("water", "running-in"), is("circuit", "in-service")),
          sound: NEVER,
          regulations: ["512.2.1", "522.3.1"],
        },
      ],
    },
    {
      id: "later",
      hazard: "burns-or-fire",
      route: "corroded terminals heat under load",
      exists: is("water", "damp", "running-in"),
      layers: [
        {
          id: "terminals",
          provision: "thermal-protection",
          words: "terminals that still hold",
          gone: NEVER,
          sound: NEVER,
          regulations: ["526.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("water", "dry-marks", "damp", "running-in"),
      words: "water has got into equipment that is not made for it",
      regulations: ["512.2.1", "522.3.1"],
    },
  ],
  client: {
    C1: "Water is running into a light or socket that is on. This can kill. Keep away. It must be made safe now.",
    C2: "Water has got into a light or socket. You could get a shock. Do not use it. Have it put right soon.",
    C3: "A light or socket has old water marks. It is dry now. Have it checked when work is next done.",
    FI: unsure("Water may have got into a light or socket. We could not look inside. It must be looked at soon.", [
      "water",
      "source-stopped",
    ]),
    none: "No water has got into the lights and sockets.",
  },
  remedies: [
    { words: "Make the circuit dead and lock it off until all is dry and tested.", changes: { circuit: "locked-off" } },
    {
      words: "Have the leak stopped, dry or replace what was wet, and test.",
      changes: { water: "none", "source-stopped": "yes" },
    },
  ],
  examples: [
    {
      name: "water drips through a ceiling light that is on",
      facts: { water: "running-in", circuit: "in-service" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: water and live parts together now",
    },
    {
      name: "the same after it was locked off",
      facts: { water: "running-in", circuit: "locked-off" },
      possible: ["C2"],
      source: "trade practice",
    },
    {
      name: "corroded terminals in a kitchen light",
      facts: { water: "damp" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice",
    },
    {
      name: "old marks, leak repaired",
      facts: { water: "dry-marks", "source-stopped": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "old marks, cause not known",
      facts: { water: "dry-marks" },
      possible: ["C3", "C2"],
      missing: ["source-stopped"],
      source: "union over the leak",
    },
  ],
});
