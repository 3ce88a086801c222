import { all, any, is, NEVER, no, oneKind, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** An inverter connected into a circuit that also feeds loads, or through a plug. */
export const sourceOnFinalCircuit = topic({
  id: "source-on-final-circuit",
  title: "Inverter connected to a final circuit",
  group: "sources",
  items: ["sources.photovoltaic", "sources.storage"],
  facts: {
    connection: ranked({
      asks: "How is the inverter connected?",
      effort: "glance",
      values: {
        "own-circuit": "the inverter has a circuit of its own",
        "wired-in": "the inverter is wired into a circuit that also feeds loads",
        plug: "the inverter is connected by a plug",
      },
    }),
    "cable-carries-both": yesNo({
      asks: "Can the cable carry the breaker's and the inverter's current together (Iz at least In + Ig)?",
      effort: "opened",
      yes: "the cable carries breaker and inverter current together",
      no: "the cable cannot carry breaker and inverter current together",
      worse: "no",
    }),
    "pins-dead": yesNo({
      asks: "Where it is plugged: are the pins proved dead at once when it is pulled out?",
      effort: "measured",
      yes: "the pins are dead at once when the plug is pulled",
      no: "the pins stay live for a time when the plug is pulled",
      worse: "no",
    }),
    "rcd-both-ways": oneKind({
      asks: "Does an RCD on that circuit still disconnect the loads when the inverter feeds it?",
      effort: "opened",
      values: {
        "disconnects-both": "both mains and inverter are cut off from the loads by the RCD",
        "leaves-inverter": "the inverter goes on feeding the loads after the RCD has opened",
        "no-rcd-relied-on": "no RCD is relied on there",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "mains and inverter together overload a cable that the breaker no longer guards",
      exists: is("connection", "wired-in", "plug"),
      layers: [
        {
          id: "overload-protection",
          provision: "overcurrent-protection",
          words: "a breaker that limits what the cable carries",
          gone: no("cable-carries-both"),
          sound: yes("cable-carries-both"),
          regulations: ["551.7.2", "433.1.1"],
        },
        { id: "load", provision: "surroundings", words: "loads that seldom add up so far", gone: NEVER, sound: NEVER },
      ],
    },
    {
      id: "live-pins",
      hazard: "contact-with-live-parts",
      route: "somebody touches the pins of the plug while the inverter still feeds them",
      exists: is("connection", "plug"),
      layers: [
        {
          id: "pins",
          provision: "isolation",
          words: "the inverter's own stopping as soon as it is unplugged",
          gone: no("pins-dead"),
          sound: NEVER,
          regulations: ["551.7.2", "416.2.1"],
        },
        { id: "left-in", provision: "information", words: "the plug being left in", gone: NEVER, sound: NEVER },
      ],
    },
    {
      id: "rcd-defeated",
      hazard: "contact-with-live-parts",
      route: "the inverter keeps a circuit live after its RCD has opened for a shock",
      exists: all(is("connection", "wired-in", "plug"), is("rcd-both-ways", "leaves-inverter")),
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "the insulation of what is plugged in",
          gone: NEVER,
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD that cuts everything off",
          gone: is("rcd-both-ways", "leaves-inverter"),
          sound: NEVER,
          regulations: ["551.7.1", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("connection", "plug"), all(is("connection", "wired-in"), no("cable-carries-both"))),
      words: "a source is connected to a final circuit in a way that is not allowed",
      regulations: ["551.7.2"],
    },
  ],
  client: {
    C2: "The solar or battery unit feeds a circuit in an unsafe way. It could overload the cable or give a shock. Put it right soon.",
    C3: "The solar or battery unit should not be on a plug. It is not a danger now. Have it wired in.",
    FI: unsure(
      "We could not find out if the solar or battery unit is connected in a safe way. This must be looked at.",
      ["connection", "cable-carries-both", "pins-dead", "rcd-both-ways"],
    ),
    none: "The solar or battery unit is connected in a safe way.",
  },
  remedies: [
    { words: "Give the inverter a circuit of its own from the board.", changes: { connection: "own-circuit" } },
  ],
  examples: [
    {
      name: "plugged into a ring, pins stay live",
      facts: {
        connection: "plug",
        "cable-carries-both": true,
        "pins-dead": false,
        "rcd-both-ways": "no-rcd-relied-on",
      },
      possible: ["C2"],
      source: "551.7.2",
    },
    {
      name: "own circuit",
      facts: { connection: "own-circuit" },
      possible: ["none"],
      source: "551.7.2",
    },
    {
      name: "wired into a radial, cable not looked at",
      facts: { connection: "wired-in", "rcd-both-ways": "disconnects-both" },
      possible: ["none", "C2"],
      missing: ["cable-carries-both"],
      source: "union over what the cable carries",
    },
  ],
});
