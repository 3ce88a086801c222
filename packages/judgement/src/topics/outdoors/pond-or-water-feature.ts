import { all, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Pumps and lights in or beside a garden pond or fountain that people do not bathe in. */
export const pondOrWaterFeature = topic({
  id: "pond-or-water-feature",
  title: "Pump or light in a pond or fountain",
  group: "outdoors",
  items: ["outdoors.weather", "outdoors.rcd"],
  facts: {
    voltage: ranked({
      asks: "At what voltage do the things in the water work?",
      effort: "glance",
      values: {
        selv: "what is in the water works at extra-low voltage from a safe source that stands dry",
        mains: "what is in the water works at mains voltage",
      },
    }),
    "rcd-30ma": yesNo({
      asks: "Is it protected by a working RCD of 30 mA or less?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects it",
      no: "no working RCD of 30 mA or less protects it",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
    cable: ranked({
      asks: "What is the state of cables and joints in and by the water?",
      effort: "glance",
      values: {
        sound: "cables are sound and joints are closed and dry",
        unsuited: "a joint or plug lies where it gets wet and is not made for it",
        damaged: "a cable in or by the water is cut or worn through",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "live-water",
      hazard: "contact-with-live-parts",
      route: "the water becomes live and somebody puts a hand in",
      exists: is("voltage", "mains"),
      layers: [
        {
          id: "sealed",
          provision: "insulation",
          words: "the seal of pump, lamp, cable and joints",
          gone: is("cable", "damaged"),
          sound: NEVER,
          regulations: ["416.1", "512.2.1", "522.3.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: any(no("rcd-30ma"), is("cable", "unsuited")),
          sound: NEVER,
          regulations: ["411.3.3", "415.1.1", "415.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("rcd-30ma"), is("voltage", "mains")),
      words: "equipment outdoors has no RCD of 30 mA or less",
      regulations: ["411.3.3"],
    },
    {
      when: is("cable", "unsuited", "damaged"),
      words: "cables or joints are not suited to the water",
      regulations: ["512.2.1", "522.3.1"],
    },
  ],
  client: {
    C1: "The pond or fountain may be live. Keep hands and pets out of the water. Turn it off now.",
    C2: "The pond pump or lights could make the water live. Turn them off until they are put right.",
    C3: "Some pond wiring is not the right type. It is low voltage, so it is not a danger now. It should be put right.",
    FI: unsure("We could not see if the pond wiring is safe. This must be looked at soon.", [
      "voltage",
      "rcd-30ma",
      "cable",
    ]),
    none: "The pond wiring is safe.",
  },
  remedies: [
    { words: "Put joints into boxes made for the wet and replace hurt cables.", changes: { cable: "sound" } },
    { words: "Protect the circuit by a 30 mA RCD.", changes: { "rcd-30ma": "yes" } },
    { words: "Change to extra-low voltage from a safety transformer that stands dry.", changes: { voltage: "selv" } },
  ],
  examples: [
    {
      name: "mains pump without RCD",
      facts: { voltage: "mains", "rcd-30ma": false, cable: "sound" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one failed seal from live water",
    },
    {
      name: "plug in a plastic bag beside the pond, RCD",
      facts: { voltage: "mains", "rcd-30ma": true, cable: "unsuited" },
      possible: ["C2"],
      source: "trade practice: water entry is to be expected",
    },
    {
      name: "pump cable cut, no RCD",
      facts: { voltage: "mains", "rcd-30ma": false, cable: "damaged" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: nothing keeps the water from being live",
    },
    {
      name: "12 V lights",
      facts: { voltage: "selv", cable: "sound" },
      possible: ["none"],
      classification: "none",
      source: "regulation: safe voltage",
    },
    {
      name: "RCD not looked for",
      facts: { voltage: "mains", cable: "sound" },
      possible: ["none", "C2"],
      missing: ["rcd-30ma"],
      source: "union over the RCD",
    },
  ],
});
