import { ALWAYS, all, is, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A cracked, chipped or broken socket-outlet, switch or other accessory. */
export const accessoryBroken = topic({
  id: "accessory-broken",
  title: "Cracked or broken accessory",
  group: "accessories",
  items: ["accessories.condition"],
  facts: {
    "finger-touches-live": yesNo({
      asks: "With the circuit as you found it, can a finger touch live metal through the damage?",
      effort: "glance",
      yes: "a finger touches live metal through the damage",
      no: "no live metal can be touched through the damage, or the circuit is locked off",
      worse: "yes",
      worked: { by: "opening-access", met: "no", notMet: "yes" },
    }),
    damage: ranked({
      asks: "How bad is the damage to the plate or body?",
      effort: "glance",
      values: {
        "surface-only": "the plate is chipped or scratched on the surface and whole",
        hairline: "there is a hairline crack, and the plate is stiff and screwed tight",
        "cracked-through": "the plate is cracked through or a piece is missing",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody who uses the accessory touches live metal where it is broken",
      exists: ALWAYS,
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the plate and body of the accessory, or a lock on the dead circuit",
          gone: yes("finger-touches-live"),
          // A crack that goes through opens further with the next knock or pull on a plug.
          sound: all(is("damage", "surface-only", "hairline"), is("finger-touches-live", "no")),
          regulations: ["416.2.1", "416.2.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("damage", "hairline", "cracked-through"),
      words: "the accessory is no longer whole",
      regulations: ["134.1.1", "416.2.3"],
    },
    {
      when: yes("finger-touches-live"),
      words: "the accessory does not keep fingers off live parts",
      regulations: ["416.2.1"],
    },
  ],
  client: {
    C1: "A socket or switch is broken. A finger can touch live metal in it. Do not use it. Have it made safe now.",
    C2: "A socket or switch is cracked right through. If it breaks more, live metal could be touched. Change it soon.",
    C3: "A socket or switch has a fine crack. It is not a danger now. A new one would be better.",
    FI: [
      unsure(
        "A socket or switch is cracked. We could not find out how bad it is. It must be looked at soon.",
        ["finger-touches-live", "damage"],
        is("damage", "hairline", "cracked-through"),
      ),
      unsure("We could not find out how bad the damage of a socket or switch is. It must be looked at soon.", [
        "finger-touches-live",
        "damage",
      ]),
    ],
    none: "The socket or switch is scratched but whole. Nothing needs to be done.",
  },
  remedies: [
    {
      words: "Replace the accessory.",
      changes: { "finger-touches-live": "no", damage: "surface-only" },
    },
    {
      words: "Until it is replaced, make the circuit dead and lock it off.",
      changes: { "finger-touches-live": "no" },
    },
  ],
  examples: [
    {
      name: "socket-outlet cracked through, nothing live in reach",
      facts: { "finger-touches-live": false, damage: "cracked-through" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: further breakage would expose live parts",
    },
    {
      name: "hairline crack, plate tight",
      facts: { "finger-touches-live": false, damage: "hairline" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: the enclosure still does its work",
    },
    {
      name: "corner gone, live terminal shows",
      facts: { "finger-touches-live": true, damage: "cracked-through" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "the same after it was locked off",
      facts: { "finger-touches-live": false, damage: "cracked-through" },
      possible: ["C2"],
      source: "trade practice: only the lock keeps it from being live",
    },
    {
      name: "scratched",
      facts: { "finger-touches-live": false, damage: "surface-only" },
      possible: ["none"],
      source: "trade practice: wear is no defect",
    },
    {
      name: "cracked through, reach not tried",
      facts: { damage: "cracked-through" },
      possible: ["C2", "C1"],
      missing: ["finger-touches-live"],
      source: "union over what a try would show",
    },
  ],
});
