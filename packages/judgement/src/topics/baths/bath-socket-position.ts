import { all, amount, any, below, held, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A socket-outlet in a room with a bath or shower. */
export const bathSocketPosition = topic({
  id: "bath-socket-position",
  title: "Socket-outlet near a bath or shower",
  group: "baths",
  items: ["bathrooms.equipment"],
  facts: {
    distance: amount({
      asks: "How far is the socket-outlet from the edge of zone 1, level and in the same room?",
      effort: "measured",
      name: "distance from zone 1",
      unit: "metre",
      worse: "lower",
    }),
    outlet: ranked({
      asks: "What kind of outlet is it?",
      effort: "glance",
      values: {
        "selv-or-shaver": "it is an outlet for extra-low voltage or an isolating shaver supply unit",
        mains: "it is an ordinary socket-outlet at mains voltage",
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
  },
  contested: {
    "rcd-enough": {
      question: "Does an RCD make up for a socket-outlet that is too near the bath or shower?",
      positions: {
        "not-enough": {
          words: "an RCD does not make up for the distance",
          because: "415.1.2: an RCD adds to other measures and is never the only one",
        },
        enough: {
          words: "with an RCD and outside the zones it is a departure and no more",
          because: "a wet hand on a plugged-in appliance is cut off at once, and one fault is still needed",
        },
      },
    },
  },
  paths: [
    {
      id: "appliance-in-the-wet",
      hazard: "contact-with-live-parts",
      route: "an appliance plugged in here is used by a wet person or falls into the water",
      exists: all(is("outlet", "mains"), below("distance", "2.5 m")),
      layers: [
        oneEventAway("appliance", "insulation", "the insulation and casing of the appliance", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: any(no("rcd-30ma"), held("rcd-enough", "not-enough")),
          sound: NEVER,
          regulations: ["701.411.3.3", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("outlet", "mains"), below("distance", "2.5 m")),
      words: "a socket-outlet is nearer to zone 1 than 2.5 m",
      regulations: ["701.512.3"],
    },
    {
      when: all(is("outlet", "mains"), no("rcd-30ma")),
      words: "a socket-outlet of the room has no RCD of 30 mA or less",
      regulations: ["701.411.3.3", "411.3.3"],
    },
  ],
  client: {
    C2: "There is a socket too near the bath or shower. Something plugged in could fall in the water. Have it removed soon.",
    C3: "A socket in the bathroom could be safer. It is not a danger now. It should be moved or given a safety switch.",
    FI: [
      unsure("We could not find out if a socket is too near the bath or shower. This must be looked at soon.", [
        "distance",
        "outlet",
      ]),
      unsure(
        "We could not find out if a fast safety switch guards a socket in the bathroom. This must be looked at soon.",
        ["rcd-30ma"],
      ),
    ],
    none: "The socket is of a safe kind, or far enough from the bath or shower.",
  },
  remedies: [
    {
      words: "Replace the socket-outlet by an isolating shaver supply unit.",
      changes: { outlet: "selv-or-shaver" },
    },
    {
      words: "Where it is 2.5 m or more away, protect it by a 30 mA RCD; where it is nearer, this does not do alone.",
      changes: { "rcd-30ma": "yes" },
    },
  ],
  examples: [
    {
      name: "1.5 m from the bath, no RCD",
      facts: { distance: "1.5 m", outlet: "mains", "rcd-30ma": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: socket-outlet within reach of use in the bath",
    },
    {
      name: "1.5 m from the bath, RCD",
      facts: { distance: "1.5 m", outlet: "mains", "rcd-30ma": true },
      possible: ["C2"],
      source: "trade practice: an RCD does not replace distance",
    },
    {
      name: "the same, RCD held to be enough",
      facts: { distance: "1.5 m", outlet: "mains", "rcd-30ma": true },
      positions: { "rcd-enough": "enough" },
      possible: ["C3"],
      source: "trade discussion: distances shortened with each edition",
    },
    {
      name: "2.7 m from the shower, RCD: too near under texts before 2022, far enough now",
      facts: { distance: "2.7 m", outlet: "mains", "rcd-30ma": true },
      possible: ["none"],
      source: "regulation: 2.5 m since the 2022 text",
    },
    {
      name: "2.7 m from the shower, no RCD",
      facts: { distance: "2.7 m", outlet: "mains", "rcd-30ma": false },
      possible: ["C3"],
      source: "regulation: RCD for every circuit of the room",
    },
    {
      name: "not measured",
      facts: { outlet: "mains", "rcd-30ma": true },
      possible: ["none", "C2"],
      missing: ["distance"],
      source: "union over distances",
    },
  ],
});
