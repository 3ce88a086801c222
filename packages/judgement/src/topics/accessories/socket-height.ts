import { all, any, is, oneKind, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A socket-outlet or switch set too low, too high or in the floor. */
export const socketHeight = topic({
  id: "socket-height",
  title: "Socket or switch set low, high or in the floor",
  group: "accessories",
  items: ["accessories.condition", "accessories.external-influences"],
  facts: {
    place: oneKind({
      asks: "What is the matter with its height or place?",
      effort: "glance",
      values: {
        "easy-reach-only": "its height is outside what building rules ask for easy reach, and nothing else is wrong",
        "bends-leads": "it is so low or close to something that plugs and leads are bent",
        underfoot: "it is in the floor or skirting, where feet, wheels and mops get to it",
      },
    }),
    closed: yesNo({
      asks: "If it is underfoot, is it made for floors, with a lid that closes?",
      effort: "glance",
      yes: "it is made for floors and its lid closes",
      no: "it is not made for floors, or its lid does not close",
      worse: "no",
    }),
    signs: yesNo({
      asks: "Has water or dirt got in, or are plugs and leads already damaged there?",
      effort: "glance",
      yes: "water or dirt has got in, or plugs and leads there are damaged",
      no: "nothing has got in and no lead there is damaged",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "water-or-damage",
      hazard: "contact-with-live-parts",
      route: "water gets in or a damaged lead shows its core, and somebody touches it",
      exists: yes("signs"),
      layers: [oneEventAway("so-far", "insulation", "insulation that has held so far", ["512.2.1", "522.8.1"])],
    },
  ],
  departures: [
    {
      when: any(is("place", "bends-leads"), all(is("place", "underfoot"), is("closed", "no")), yes("signs")),
      words: "its place does not keep it and what is plugged in from damage",
      regulations: ["553.1.6", "512.2.1"],
    },
  ],
  client: {
    C2: "A socket is wet, dirty or damaged where it is. It could give a shock. Have it moved or changed soon.",
    C3: "A socket is in a place where it can be hurt. It is not a danger now. It is better moved.",
    FI: unsure("We could not see if a socket in a bad place is damaged. This must be looked at soon.", ["signs"]),
    none: "The sockets and switches are in safe places.",
  },
  remedies: [
    { words: "Fit a floor box with a lid, if it is in the floor.", changes: { closed: "yes", signs: "no" } },
    { words: "Move it, and replace what is damaged.", changes: { place: "easy-reach-only", signs: "no" } },
  ],
  examples: [
    {
      name: "sockets at skirting height, leads free",
      facts: { place: "easy-reach-only", signs: false },
      possible: ["none"],
      classification: "none",
      source: "trade discussion: heights for easy reach are building rules for new homes",
    },
    {
      name: "plug jammed against the worktop",
      facts: { place: "bends-leads", signs: false },
      possible: ["C3"],
      classification: "C3",
      source: "regulation: height to keep leads from damage",
    },
    {
      name: "ordinary socket in the skirting of a shop, mopped daily, dirt inside",
      facts: { place: "underfoot", closed: false, signs: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water gets in",
    },
    {
      name: "not opened",
      facts: { place: "underfoot", closed: false },
      possible: ["C3", "C2"],
      missing: ["signs"],
      source: "union over what opening would show",
    },
  ],
});
