import { ALWAYS, all, any, held, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { DISTANCE } from "../contested.ts";
import { oneEventAway, topic } from "../topic.ts";

/** Ends of conductors that are not connected to anything, and that are live or can become so. */
export const liveConductorsUnterminated = topic({
  id: "live-conductors-unterminated",
  title: "Loose or unused ends of conductors",
  group: "circuits",
  items: ["circuits.terminations", "boards.connections"],
  facts: {
    live: ranked({
      asks: "Are the ends live, or can they become so?",
      effort: "measured",
      values: {
        dead: "the conductors are disconnected at their supply end too",
        "can-be-live": "the ends are dead now and become live by a switch or breaker",
        live: "the ends are live",
      },
    }),
    ends: ranked({
      asks: "How are the ends finished?",
      effort: "glance",
      values: {
        terminated: "every end is in an insulated terminal",
        taped: "the ends are covered by tape, or cut off short",
        bare: "metal of an end shows",
      },
    }),
    place: ranked({
      asks: "Where do the ends lie?",
      effort: "glance",
      values: {
        enclosed: "they lie in a closed enclosure that needs a tool",
        void: "they lie in a void or loft that people seldom enter",
        "above-reach": "they lie above arm's reach where people come",
        "in-reach": "they lie within reach of people",
      },
    }),
    "metal-beside": yesNo({
      asks: "Can the end swing against earthed metal, another conductor or something that burns?",
      effort: "glance",
      yes: "the end can touch metal, another conductor or something that burns",
      no: "the end is held clear of everything",
      worse: "yes",
    }),
  },
  contested: {
    distance: DISTANCE,
    "off-for-now": {
      question: "Bare ends in reach that one breaker makes live: danger now, or one step away?",
      positions: {
        "one-step": {
          words: "they are one step from danger",
          because: "somebody has to switch on first",
        },
        now: {
          words: "they count as live",
          because: "anybody can switch on, and nobody sees that the ends are bare",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches a bare end",
      exists: is("live", "can-be-live", "live"),
      layers: [
        {
          id: "cover",
          provision: "insulation",
          words: "the insulation over the end",
          gone: is("ends", "bare"),
          sound: is("ends", "terminated"),
          regulations: ["416.1"],
        },
        {
          id: "place",
          provision: "barrier-or-enclosure",
          words: "a place that hands do not get to",
          gone: any(
            is("place", "in-reach"),
            all(is("place", "above-reach"), is("ends", "bare"), held("distance", "does-not-count")),
          ),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
        {
          id: "off",
          provision: "isolation",
          words: "a switch or breaker that is off",
          gone: any(is("live", "live"), held("off-for-now", "now")),
          sound: NEVER,
        },
      ],
    },
    {
      id: "arc",
      hazard: "burns-or-fire",
      route: "a bare end touches metal or another conductor and arcs",
      exists: all(is("live", "can-be-live", "live"), is("ends", "bare"), yes("metal-beside")),
      layers: [
        {
          id: "clear",
          provision: "insulation",
          words: "an end that is insulated",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["526.1"],
        },
        oneEventAway("device", "overcurrent-protection", "the overcurrent device, which clears a short circuit", [
          "434.1",
        ]),
      ],
    },
  ],
  departures: [
    {
      when: all(is("live", "can-be-live", "live"), is("ends", "taped", "bare")),
      words: "ends of live conductors are not terminated in an enclosure",
      regulations: ["526.5", "416.1"],
    },
  ],
  client: {
    C1: [
      says(
        "Live ends of wires are bare where people come. They can kill. Keep away. The power to them must stay off until they are made safe.",
        is("live", "live"),
      ),
      says(
        "Bare ends of wires lie where people come, and a switch makes them live. They can kill. The power to them must stay off until they are made safe.",
        is("live", "can-be-live"),
      ),
    ],
    C2: "Loose ends of wires are not made safe. They could give a shock or spark. Have them made safe soon.",
    C3: [
      says(
        "Loose ends of wires are only taped. They are out of the way. Have them closed in when you can.",
        all(is("ends", "taped"), is("place", "enclosed", "void")),
      ),
      "Loose ends of wires are not closed in. They are not a danger now. Have them closed in when you can.",
    ],
    FI: [
      unsure(
        "We found loose ends of wires and could not tell if they are live. They must be looked at soon.",
        ["live"],
        is("ends", "taped", "bare"),
      ),
      unsure("We could not see how safe some loose ends of wires are. They must be looked at soon.", [
        "live",
        "ends",
        "place",
        "metal-beside",
      ]),
    ],
    none: "No loose ends of wires were found that could harm.",
  },
  remedies: [
    { words: "Disconnect the conductors at their supply end, and prove them dead.", changes: { live: "dead" } },
    {
      words: "Put every end in an insulated terminal inside a closed enclosure.",
      changes: { ends: "terminated", place: "enclosed", "metal-beside": "no" },
    },
  ],
  examples: [
    {
      name: "bare live ends where a heater was taken off the wall",
      facts: { live: "live", ends: "bare", place: "in-reach", "metal-beside": false },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "live ends taped behind a loose blank within reach",
      facts: { live: "live", ends: "taped", place: "in-reach", "metal-beside": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: tape is the only layer",
    },
    {
      name: "bare ends in reach, breaker off and not locked",
      facts: { live: "can-be-live", ends: "bare", place: "in-reach", "metal-beside": false },
      possible: ["C2"],
      source: "trade practice: one switch from danger",
    },
    {
      name: "the same where they are held to count as live",
      facts: { live: "can-be-live", ends: "bare", place: "in-reach", "metal-beside": false },
      positions: { "off-for-now": "now" },
      possible: ["C1"],
      source: "trade discussion of breakers left off",
    },
    {
      name: "spare cores of a board, taped, in the board",
      facts: { live: "can-be-live", ends: "taped", place: "enclosed" },
      possible: ["C3"],
      source: "trade practice: two layers hold",
    },
    {
      name: "cable of a removed alarm, not traced",
      facts: {
        ends: "bare",
        place: "in-reach",
        "metal-beside": false,
        live: { notKnown: "limited", reason: "supply end not found" },
      },
      possible: ["none", "C2", "C1"],
      classification: "FI",
      source: "union over whether it is fed",
    },
    {
      name: "not proved dead",
      facts: { ends: "taped", place: "in-reach", "metal-beside": false },
      possible: ["none", "C3", "C2"],
      missing: ["live"],
      source: "union over whether it is fed",
    },
  ],
});
