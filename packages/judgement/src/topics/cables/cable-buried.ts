import { ALWAYS, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A cable in the ground: kind, depth, marking and damage. */
export const cableBuried = topic({
  id: "cable-buried",
  title: "Buried cable",
  group: "cables",
  items: ["outdoors.buried"],
  facts: {
    kind: ranked({
      asks: "What is it, and what is around it?",
      effort: "glance",
      values: {
        armoured: "it has armour or an earthed metal covering made for the ground, and the covering is earthed",
        ducted: "it is in a duct or conduit that stands up to a spade",
        unprotected: "it is a cable with a plain sheath laid in the soil, or its armour is not earthed",
      },
    }),
    depth: ranked({
      asks: "How deep does it lie for what is done there?",
      effort: "glance",
      values: {
        deep: "it lies deeper than anything that is foreseeably dug there",
        shallow: "it lies where a spade or a fork reaches",
        surface: "it lies on the surface or comes out of the ground unprotected",
      },
    }),
    marked: yesNo({
      asks: "Is its route marked: by tape or covers above it, or by a plan and plates?",
      effort: "opened",
      yes: "tape, covers or plates mark its route",
      no: "nothing marks its route",
      worse: "no",
    }),
    damage: ranked({
      asks: "What is it like where it can be seen?",
      effort: "glance",
      values: {
        none: "no damage can be seen",
        damaged: "its sheath, armour or duct is damaged",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "spade",
      hazard: "contact-with-live-parts",
      route: "a spade, fork or mower cuts into the cable",
      exists: ALWAYS,
      layers: [
        oneEventAway("insulation", "insulation", "the insulation and sheath of the cable", ["416.1"]),
        {
          id: "covering",
          provision: "barrier-or-enclosure",
          words: "earthed armour or a duct",
          gone: any(is("kind", "unprotected"), is("damage", "damaged")),
          sound: NEVER,
          regulations: ["522.8.10"],
        },
        {
          id: "depth",
          provision: "out-of-reach",
          words: "depth beyond what is dug",
          gone: is("depth", "shallow", "surface"),
          sound: NEVER,
          regulations: ["522.8.10"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("kind", "unprotected"), is("depth", "shallow", "surface")),
      words: "a buried cable is not protected or not deep enough",
      regulations: ["522.8.10"],
    },
    {
      when: no("marked"),
      words: "the route of a buried cable is not marked",
      regulations: ["522.8.10"],
    },
    {
      when: is("damage", "damaged"),
      words: "a buried cable is damaged",
      regulations: ["134.1.1"],
    },
  ],
  client: {
    C2: "A cable in the ground lies where a spade can cut it. That could give a shock. Have it made safe soon.",
    C3: "A cable in the ground could be laid better. It is not a danger now. Mark where it runs and do not dig there.",
    FI: [
      unsure("We could not find out how a cable in the ground is laid. A spade could cut it. This must be looked at.", [
        "kind",
        "depth",
      ]),
      unsure("We could not see if a cable in the ground is damaged. This must be looked at.", ["damage"]),
    ],
    none: "The cable in the ground is laid as it should be.",
  },
  remedies: [
    { words: "Mark the route with plates and a plan.", changes: { marked: "yes" } },
    {
      words: "Replace it by armoured cable at a depth that digging does not reach, with tape above.",
      changes: { kind: "armoured", depth: "deep", marked: "yes", damage: "none" },
    },
  ],
  examples: [
    {
      name: "plain sheathed cable just under a lawn",
      facts: { kind: "unprotected", depth: "shallow", marked: false, damage: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; regulation 522.8.10",
    },
    {
      name: "armoured, 600 mm down, no tape",
      facts: { kind: "armoured", depth: "deep", marked: false, damage: "none" },
      possible: ["C3"],
      classification: "C3",
      source: "regulation 522.8.10",
    },
    {
      name: "armoured, shallow under gravel",
      facts: { kind: "armoured", depth: "shallow", marked: true, damage: "none" },
      possible: ["C3"],
      source: "trade practice: armour clears a strike",
    },
    {
      name: "armour rusted through in a shallow run",
      facts: { kind: "armoured", depth: "shallow", marked: true, damage: "damaged" },
      possible: ["C2"],
      source: "trade practice: the covering no longer clears a strike",
    },
    {
      name: "depth not found out",
      facts: {
        kind: "unprotected",
        marked: false,
        damage: "none",
        depth: { notKnown: "limited", reason: "no digging agreed" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the depth",
    },
    {
      name: "kind not looked at",
      facts: { depth: "shallow", marked: true, damage: "none" },
      possible: ["C3", "C2"],
      missing: ["kind"],
      source: "union over the kind",
    },
  ],
});
