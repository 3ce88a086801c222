import { any, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Equipment that gets hot, and what stands close to it. */
export const hotEquipmentClearance = topic({
  id: "hot-equipment-clearance",
  title: "Heater, oven or flue (not a light) close to what can burn or be touched",
  group: "fire",
  items: ["fire.hot-surfaces", "accessories.luminaires"],
  facts: {
    clearance: ranked({
      asks: "How close is what can burn, against the distance marked on the equipment or asked by its maker?",
      effort: "glance",
      values: {
        kept: "the distance its maker asks for is kept",
        short: "what can burn is closer than its maker allows",
        touching: "what can burn touches it or lies on it",
      },
    }),
    marks: ranked({
      asks: "Are there marks of heat?",
      effort: "glance",
      values: {
        none: "there are no marks of heat",
        brown: "things near it are brown or discoloured",
        charred: "things near it are charred or smoulder",
      },
    }),
    touchable: yesNo({
      asks: "Can a surface hot enough to burn be touched where people reach it by chance?",
      effort: "glance",
      yes: "a surface hot enough to burn can be touched by chance",
      no: "hot surfaces are guarded or out of the way",
      worse: "yes",
    }),
    "cut-out": yesNo({
      asks: "Does it switch itself off when it gets too hot?",
      effort: "opened",
      yes: "a thermal cut-out switches it off",
      no: "nothing switches it off when it gets too hot",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "sets-alight",
      hazard: "burns-or-fire",
      route: "the heat sets something alight",
      exists: any(is("clearance", "short", "touching"), is("marks", "brown", "charred")),
      layers: [
        {
          id: "distance",
          provision: "thermal-protection",
          words: "distance from what can burn",
          gone: any(is("clearance", "touching"), is("marks", "brown", "charred")),
          sound: NEVER,
          regulations: ["421.1.2", "559.4.1"],
        },
        {
          id: "limit",
          provision: "thermal-protection",
          words: "heat that stays below what sets things alight",
          gone: is("marks", "charred"),
          sound: NEVER,
          regulations: ["421.1.2", "424.1"],
        },
        {
          id: "cut-out",
          provision: "thermal-protection",
          words: "a thermal cut-out",
          gone: any(is("cut-out", "no"), is("marks", "brown", "charred")),
          sound: NEVER,
          regulations: ["424.1"],
        },
      ],
    },
    {
      id: "burnt-hand",
      hazard: "burns-or-fire",
      route: "somebody touches a surface that burns",
      exists: yes("touchable"),
      layers: [oneEventAway("care", "information", "the care people take near something they know is hot", ["423.1"])],
    },
  ],
  departures: [
    {
      when: any(is("clearance", "short", "touching"), is("marks", "brown", "charred"), yes("touchable")),
      words: "equipment that gets hot is too close to what can burn or be touched",
      regulations: ["421.1.2", "423.1", "559.4.1"],
    },
  ],
  client: {
    C1: "Something near hot equipment has begun to char. It could burn at any time. Keep it off.",
    C2: [
      says(
        "Hot equipment is too close to things that burn. It could start a fire. Keep it off until it is put right.",
        any(is("clearance", "touching"), is("marks", "brown")),
      ),
      says("A hot part can be touched and could burn someone. Keep it off until it is guarded.", yes("touchable")),
    ],
    C3: "Hot equipment is a little close to things that can burn. It is not a danger now. Move them apart.",
    FI: [
      unsure("We could not see what lies near the hot equipment. This must be looked at soon.", ["clearance", "marks"]),
      unsure("We could not find out how safe the hot equipment is. This must be looked at soon.", [
        "touchable",
        "cut-out",
      ]),
    ],
    none: "Hot equipment is far enough from things that burn.",
  },
  remedies: [
    { words: "Move what can burn away, or shield it.", changes: { clearance: "kept", marks: "none" } },
    { words: "Guard the hot surface.", changes: { touchable: "no" } },
    {
      words: "Replace it by equipment that runs cooler or switches itself off.",
      changes: { clearance: "kept", marks: "none", "cut-out": "yes", touchable: "no" },
    },
  ],
  examples: [
    {
      name: "floodlight a hand's width from timber, no marks, no cut-out",
      facts: { clearance: "short", marks: "none", touchable: false, "cut-out": false },
      possible: ["C3"],
      source: "arithmetic of layers: distance and heat limit both hold",
    },
    {
      name: "brown marks on a joist",
      facts: { clearance: "touching", marks: "brown", touchable: false, "cut-out": false },
      possible: ["C2"],
      source: "trade practice: heat has begun to show",
    },
    {
      name: "void not seen",
      facts: { touchable: false, "cut-out": false },
      possible: ["none", "C3", "C2", "C1"],
      missing: ["clearance", "marks"],
      source: "union over what may be there",
    },
  ],
});
