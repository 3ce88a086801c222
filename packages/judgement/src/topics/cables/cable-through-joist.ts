import { all, amount, any, below, held, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Cables under floors and above ceilings where nails and screws reach them. */
export const cableThroughJoist = topic({
  id: "cable-through-joist",
  title: "Cable in floor joists near the surface",
  group: "cables",
  items: ["circuits.concealed", "circuits.support"],
  facts: {
    depth: amount({
      asks: "At the joists, how far is it below the top (or above the bottom)?",
      name: "distance of the cable from the face of the joist",
      effort: "opened",
      unit: "metre",
      worse: "lower",
    }),
    covering: yesNo({
      asks: "Is it in earthed metal, or is steel fixed over the notch?",
      effort: "opened",
      yes: "earthed metal or a steel plate stops a nail",
      no: "nothing stops a nail",
      worse: "no",
    }),
    fixings: ranked({
      asks: "How likely are new nails or screws there?",
      effort: "glance",
      values: {
        seldom: "the floor or ceiling is finished and left alone",
        likely: "boards are loose, squeak or are marked with fixings beside the cable, or work on them is planned",
      },
    }),
    "rcd-30ma": yesNo({
      asks: "Does a working RCD of 30 mA or less protect it?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects it",
      no: "no working RCD of 30 mA or less protects it",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
  },
  contested: {
    "shallow-at-joist": {
      question: "A shallow cable at a joist in a finished floor, no RCD: improvement or danger?",
      positions: {
        improve: {
          words: "in a floor that is left alone it is to be improved",
          because: "nobody drives a nail there until the floor is lifted",
        },
        danger: {
          words: "a nail over the joist is the usual nail",
          because: "boards and grippers are fixed over joists, just where the cable crosses",
        },
      },
    },
  },
  paths: [
    {
      id: "nail",
      hazard: "contact-with-live-parts",
      route: "a nail or screw goes through the cable and makes metal live, or burns it",
      exists: all(below("depth", "50 mm"), no("covering")),
      layers: [
        oneEventAway("unstruck", "insulation", "insulation and sheath of the cable", ["416.1"]),
        {
          id: "left-alone",
          provision: "surroundings",
          words: "a floor or ceiling that is left alone",
          gone: any(is("fixings", "likely"), held("shallow-at-joist", "danger")),
          sound: NEVER,
          regulations: ["522.6.201"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: no("rcd-30ma"),
          sound: NEVER,
          regulations: ["415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(below("depth", "50 mm"), no("covering")),
      words: "a cable lies less than 50 mm from the face of a joist without protection",
      regulations: ["522.6.201"],
    },
  ],
  client: {
    C2: "A cable lies just under the floor. A nail could go into it and give a shock. Have it made safe soon.",
    C3: "A cable lies close under the floor. Do not nail there. It should be shielded when the floor is next up.",
    FI: [
      unsure(
        "We could not see how deep some cables lie under the floor. A nail could hit them. This must be looked at.",
        ["depth", "covering"],
      ),
      unsure("We could not find out if a cable under the floor is protected from nails. This must be looked at.", [
        "fixings",
        "rcd-30ma",
      ]),
    ],
    none: "The cables under the floor are deep enough or shielded.",
  },
  remedies: [
    { words: "Protect the circuit with an RCD of 30 mA.", changes: { "rcd-30ma": "yes" } },
    {
      words: "Fix a steel plate over each notch.",
      changes: { covering: "yes" },
    },
  ],
  examples: [
    {
      name: "notch 20 mm deep under a finished floor, no RCD",
      facts: { depth: "20 mm", covering: false, fixings: "seldom", "rcd-30ma": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 522.6.201",
    },
    {
      name: "the same held to be a danger",
      facts: { depth: "20 mm", covering: false, fixings: "seldom", "rcd-30ma": false },
      positions: { "shallow-at-joist": "danger" },
      possible: ["C2"],
      source: "trade discussion of notched joists",
    },
    {
      name: "loose boards about to be screwed down",
      facts: { depth: "10 mm", covering: false, fixings: "likely", "rcd-30ma": false },
      possible: ["C2"],
      source: "trade practice: penetration to be expected",
    },
    {
      name: "holes on the centre line, 90 mm down",
      facts: { depth: "90 mm" },
      possible: ["none"],
      source: "regulation 522.6.201",
    },
    {
      name: "floor not lifted",
      facts: {
        fixings: "likely",
        "rcd-30ma": false,
        depth: { notKnown: "limited", reason: "fixed floor covering" },
        covering: { notKnown: "limited", reason: "fixed floor covering" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the depth",
    },
    {
      name: "depth not measured",
      facts: { covering: false, fixings: "seldom", "rcd-30ma": true },
      possible: ["none", "C3"],
      missing: ["depth"],
      source: "union over the depth",
    },
  ],
});
