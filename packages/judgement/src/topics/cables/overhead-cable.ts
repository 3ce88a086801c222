import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { DISTANCE } from "../contested.ts";
import { oneEventAway, topic } from "../topic.ts";

/** A cable slung between buildings or along a fence. */
export const overheadCable = topic({
  id: "overhead-cable",
  title: "Overhead cable",
  group: "cables",
  items: ["outdoors.buried", "circuits.support", "circuits.insulation"],
  facts: {
    height: ranked({
      asks: "What passes or stands below it, and how near can it come?",
      effort: "glance",
      values: {
        clear: "people, ladders and vehicles stay clear of it",
        "in-reach": "people reach it by hand, from the ground or at a window",
        struck: "a vehicle, a ladder or what people carry can strike it",
      },
    }),
    carried: yesNo({
      asks: "Is it carried by a wire of its own, or made to carry itself?",
      effort: "glance",
      yes: "a wire carries it, or it is made to carry itself",
      no: "it hangs by its own conductors",
      worse: "no",
    }),
    sheath: ranked({
      asks: "Is its sheath made for sun and weather, and what is it like?",
      effort: "glance",
      values: {
        weatherproof: "its sheath is made for sun and weather, and is sound",
        "indoor-kind": "it is of an indoor kind, still whole",
        cracked: "its sheath is cracked or chafed",
        bare: "metal of a conductor shows",
      },
    }),
    ends: ranked({
      asks: "What are its ends like?",
      effort: "glance",
      values: {
        held: "the ends are clamped, and water drips off before it enters",
        strained: "the pull or the water comes to the connections",
      },
    }),
  },
  contested: {
    distance: DISTANCE,
    "indoor-kind": {
      question: "An indoor cable slung outdoors, still whole and out of reach: danger or improvement?",
      positions: {
        improve: {
          words: "while it is whole it is to be improved",
          because: "no event in sight takes both height and insulation away",
        },
        danger: {
          words: "sun will crack it, and then it is live in the rain",
          because: "its sheath is not made for where it is, 522.11.1",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody, or something held, touches a conductor through a failed sheath",
      exists: ALWAYS,
      layers: [
        {
          id: "sheath",
          provision: "insulation",
          words: "a sheath and insulation that last outdoors",
          gone: any(is("sheath", "bare", "cracked"), all(is("sheath", "indoor-kind"), held("indoor-kind", "danger"))),
          sound: is("sheath", "weatherproof"),
          regulations: ["416.1", "522.11.1"],
        },
        {
          id: "height",
          provision: "out-of-reach",
          words: "height, or the insulation of the cores where only the sheath has failed",
          gone: all(is("sheath", "bare"), any(is("height", "in-reach", "struck"), held("distance", "does-not-count"))),
          sound: NEVER,
          regulations: ["522.8.1"],
        },
      ],
    },
    {
      id: "falls",
      hazard: "contact-with-live-parts",
      route: "it breaks under wind, ice or a blow, and its live end comes down",
      exists: any(no("carried"), is("ends", "strained"), is("height", "struck")),
      layers: [
        oneEventAway("insulation", "insulation", "conductors that hold so far", ["416.1"]),
        {
          id: "carried",
          provision: "surroundings",
          words: "clearance, and a wire and clamps that take the pull",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["522.8.4", "522.8.5"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("sheath", "indoor-kind", "cracked", "bare"), no("carried"), is("ends", "strained")),
      words: "an overhead cable is not made or carried for its place",
      regulations: ["522.8.4", "522.11.1"],
    },
    {
      when: is("height", "in-reach", "struck"),
      words: "an overhead cable hangs too low",
      regulations: ["522.8.1"],
    },
  ],
  client: {
    C1: "A cable outside has bare live metal. It can kill. Keep away. The power to it must stay off.",
    C2: [
      says(
        "A cable hung outside has a bad cover. It could give a shock. Have it replaced soon.",
        is("sheath", "cracked", "bare"),
      ),
      says(
        "A cable hung outside is not held well. It could fall and give a shock. Have it put right soon.",
        any(no("carried"), is("ends", "strained")),
      ),
      says(
        "A cable hung outside can be struck by people or cars. It could come down and give a shock. Have it put right soon.",
        is("height", "struck"),
      ),
      says(
        "A cable hung outside is not made for the weather. Its cover could fail and give a shock. Have it replaced soon.",
        is("sheath", "indoor-kind"),
      ),
    ],
    C3: "A cable hung outside is not quite right for its place. It is sound now. Have it bettered.",
    FI: [
      unsure("We could not get close to a cable hung outside. It may be worn. It must be looked at.", ["sheath"]),
      unsure("We could not find out how a cable outside is hung and held. It must be looked at.", [
        "height",
        "carried",
        "ends",
      ]),
    ],
    none: "The cable hung outside is sound and well held.",
  },
  remedies: [
    { words: "Hang it from a wire and clamp its ends.", changes: { carried: "yes", ends: "held" } },
    {
      words: "Replace it by cable made for outdoors, high enough or in the ground.",
      changes: { sheath: "weatherproof", height: "clear", carried: "yes", ends: "held" },
    },
  ],
  examples: [
    {
      name: "indoor cable to a shed, hung by itself",
      facts: { height: "clear", carried: false, sheath: "indoor-kind", ends: "held" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; regulation 522.8.4",
    },
    {
      name: "indoor cable on a wire, whole and high",
      facts: { height: "clear", carried: true, sheath: "indoor-kind", ends: "held" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 522.11.1",
    },
    {
      name: "the same held to be a danger",
      facts: { height: "clear", carried: true, sheath: "indoor-kind", ends: "held" },
      positions: { "indoor-kind": "danger" },
      possible: ["C2"],
      source: "trade discussion of sheds",
    },
    {
      name: "cracked to the copper beside a window",
      facts: { height: "in-reach", sheath: "bare" },
      possible: ["C1"],
      source: "trade practice: live metal in reach",
    },
    {
      name: "made for it, high, on a wire",
      facts: { height: "clear", carried: true, sheath: "weatherproof", ends: "held" },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "sheath not seen from near",
      facts: {
        height: "clear",
        carried: true,
        ends: "held",
        sheath: { notKnown: "limited", reason: "no safe access at height" },
      },
      possible: ["none", "C3", "C2", "C1"],
      classification: "FI",
      source: "union over the sheath",
    },
    {
      name: "ends not looked at",
      facts: { height: "clear", carried: true, sheath: "weatherproof" },
      possible: ["none", "C2"],
      missing: ["ends"],
      source: "union over the ends",
    },
  ],
});
