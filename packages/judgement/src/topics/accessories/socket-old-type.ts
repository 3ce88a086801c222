import { all, any, is, ranked, says, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Socket-outlets of an old or odd pattern, or with shutters that do not close. */
export const socketOldType = topic({
  id: "socket-old-type",
  title: "Round-pin, two-pin or unshuttered socket",
  group: "accessories",
  items: ["accessories.condition", "accessories.connections"],
  facts: {
    shutters: ranked({
      asks: "Are the live contacts behind shutters that close?",
      effort: "glance",
      values: {
        close: "shutters close over the live contacts",
        "never-had": "the socket-outlet is of a pattern without shutters",
        broken: "the shutters are broken or stay open",
      },
    }),
    "earth-contact": ranked({
      asks: "Has it an earth contact, and what is plugged in?",
      effort: "glance",
      values: {
        earthed: "it has an earth contact",
        "class-2-only": "it has no earth contact and fits only plugs of class II equipment in use here",
        "class-1-used": "it has no earth contact, and equipment that wants an earth is or can be plugged in",
      },
    }),
    purpose: ranked({
      asks: "What is it for?",
      effort: "glance",
      values: {
        special: "it serves one plain purpose, such as table lamps switched from the door",
        general: "it serves for anything",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "pokes-in",
      hazard: "contact-with-live-parts",
      route: "a child pokes something into the live contact",
      exists: is("shutters", "broken"),
      layers: [oneEventAway("depth", "barrier-or-enclosure", "the depth of the contact behind the plate", ["416.2.1"])],
    },
    {
      id: "live-case",
      hazard: "shock-under-fault",
      route: "a fault makes the case of equipment live, and nothing disconnects it",
      exists: is("earth-contact", "class-1-used"),
      layers: [oneEventAway("basic", "insulation", "the insulation of the equipment", ["411.3.1.1", "416.1"])],
    },
  ],
  departures: [
    {
      when: any(
        is("shutters", "broken"),
        all(is("shutters", "never-had"), is("purpose", "general")),
        is("earth-contact", "class-2-only", "class-1-used"),
      ),
      words: "the socket-outlet is not of a kind for general use",
      regulations: ["553.1.3", "553.1.4", "553.1.201"],
    },
  ],
  client: {
    C2: [
      says("A socket has broken shutters. A child could get a shock. Have it changed soon.", is("shutters", "broken")),
      says(
        "A socket has no earth. A fault in what is plugged in could give a shock. Have it changed soon.",
        is("earth-contact", "class-1-used"),
      ),
    ],
    C3: "A socket is of an old type. It is not a danger now. A new one is advised.",
    FI: [
      unsure("We could not find out what an old socket is used for. This must be looked at soon.", ["earth-contact"]),
      unsure("We could not find out if a socket keeps its live parts covered. This must be looked at soon.", [
        "shutters",
      ]),
    ],
    none: "The sockets are of a safe type.",
  },
  remedies: [
    {
      words: "Replace it by a shuttered socket-outlet, if the circuit has a protective conductor.",
      changes: { shutters: "close", "earth-contact": "earthed" },
    },
  ],
  examples: [
    {
      name: "round-pin 15 A socket for anything, earthed",
      facts: { shutters: "never-had", "earth-contact": "earthed", purpose: "general" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: old and working",
    },
    {
      name: "round-pin 5 A sockets for table lamps",
      facts: { shutters: "never-had", "earth-contact": "earthed", purpose: "special" },
      possible: ["none"],
      source: "trade practice: plain purpose",
    },
    {
      name: "shutter broken on a 13 A socket",
      facts: { shutters: "broken", "earth-contact": "earthed" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: live contact open to a child",
    },
    {
      name: "two-pin socket with a metal lamp",
      facts: { "earth-contact": "class-1-used" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "two-pin socket, use not known",
      facts: { shutters: "close", "earth-contact": "class-2-only | class-1-used", purpose: "general" },
      possible: ["C3", "C2"],
      missing: ["earth-contact"],
      source: "union over uses",
    },
  ],
});
