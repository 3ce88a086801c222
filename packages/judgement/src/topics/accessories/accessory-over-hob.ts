import { any, is, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A socket-outlet or switch over or beside a hob. */
export const accessoryOverHob = topic({
  id: "accessory-over-hob",
  title: "Accessory over or beside a hob",
  group: "accessories",
  items: ["accessories.external-influences"],
  facts: {
    place: ranked({
      asks: "Where is it, seen from the hob?",
      effort: "glance",
      values: {
        clear: "it is clear of the hob",
        close: "it is so close that heat, steam or fat gets to it",
        over: "it is over the hob, so that an arm or a lead crosses the heat",
      },
    }),
    damage: ranked({
      asks: "What has the hob done to it or to a lead?",
      effort: "glance",
      values: {
        none: "the hob has left no mark on it",
        greasy: "fat or steam has got into it",
        softened: "heat has softened or browned it or a lead",
      },
    }),
    "leads-cross": yesNo({
      asks: "Do leads of things in use lie across or hang over the hob?",
      effort: "glance",
      yes: "leads lie across or hang over the hob",
      no: "no lead crosses the hob",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "melts",
      hazard: "burns-or-fire",
      route: "the hob melts or fouls the accessory or a lead until live metal is bare or burns",
      exists: any(is("damage", "greasy", "softened"), yes("leads-cross")),
      layers: [
        oneEventAway("insulation", "insulation", "insulation that heat and fat have not got through yet", [
          "522.2.1",
          "512.2.1",
        ]),
      ],
    },
  ],
  departures: [
    {
      when: any(is("place", "close", "over"), is("damage", "greasy", "softened"), yes("leads-cross")),
      words: "the accessory is in a place that does not suit it",
      regulations: ["512.2.1"],
    },
  ],
  client: {
    C2: "The hob can harm a socket, a switch or a lead. It could give a shock or burn. Have this put right soon.",
    C3: "A socket or switch is too close to the hob. It is not a danger now. It is better moved.",
    FI: [
      unsure("We could not see what the hob has done to a socket or switch. This must be looked at soon.", ["damage"]),
      unsure("We could not find out if leads cross the hob. This must be looked at soon.", ["leads-cross", "place"]),
    ],
    none: "The sockets and switches are well clear of the hob.",
  },
  remedies: [
    {
      words: "Move it beside the hob, clear of heat and steam.",
      changes: { place: "clear", damage: "none", "leads-cross": "no" },
    },
  ],
  examples: [
    {
      name: "cooker switch over the hob, no mark",
      facts: { place: "over", damage: "none", "leads-cross": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: one reaches across the heat",
    },
    {
      name: "plate softened by a gas ring",
      facts: { place: "close", damage: "softened" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: heat does damage",
    },
    {
      name: "kettle lead across the hob",
      facts: { place: "over", "leads-cross": true },
      possible: ["C2"],
      source: "trade practice: the lead will melt",
    },
    {
      name: "not opened",
      facts: { place: "close", "leads-cross": false },
      possible: ["C3", "C2"],
      missing: ["damage"],
      source: "union over what opening would show",
    },
  ],
});
