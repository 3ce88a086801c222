import { ALWAYS, all, any, held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A ring final circuit bridged within itself, or joined to another circuit. */
export const ringInterconnected = topic({
  id: "ring-interconnected",
  title: "Ring final circuit bridged or crossed",
  group: "circuits",
  items: ["circuits.capacity", "circuits.protection", "circuits.identification"],
  facts: {
    joined: ranked({
      asks: "What do the cross-connected readings show?",
      effort: "measured",
      values: {
        none: "the readings are those of one plain ring",
        within: "the ring is bridged within itself: a figure of eight or a ring in the ring",
        crossed: "the ring is joined to another circuit with a device of its own",
      },
    }),
    switching: ranked({
      asks: "If joined to another circuit: how are the two switched?",
      effort: "glance",
      values: {
        together: "one device, or linked devices, switch both off together",
        apart: "separate devices switch them",
      },
    }),
    sections: ranked({
      asks: "Can some section carry more than it is able to, because of the bridge or a break beyond it?",
      effort: "measured",
      values: {
        even: "no section can carry more than it is able to",
        uneven: "a section can carry more than it is able to",
      },
    }),
  },
  contested: {
    "bridge-alone": {
      question: "A bridge within the ring that overloads no section: is that anything to report?",
      positions: {
        improve: {
          words: "it is to be improved, because it defeats the tests of the ring",
          because: "a bridge hides a later break from end to end readings",
        },
        nothing: {
          words: "more paths than a ring needs do no harm",
          because: "every section carries less current than in a plain ring",
        },
      },
    },
  },
  paths: [
    {
      id: "not-dead",
      hazard: "contact-with-live-parts",
      route: "one device is switched off for work and the other keeps the conductors live",
      exists: all(is("joined", "crossed"), is("switching", "apart")),
      layers: [
        oneEventAway("closed", "barrier-or-enclosure", "enclosures that stay closed until somebody works inside", [
          "416.2.4",
        ]),
        {
          id: "isolation",
          provision: "isolation",
          words: "one device that makes the circuit dead",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["314.4", "462.2"],
        },
      ],
    },
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "a section carries more than it is able to, and no device opens",
      exists: all(is("joined", "within", "crossed"), is("sections", "uneven")),
      layers: [
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "a device that protects every section",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["433.1.1", "433.1.204"],
        },
        oneEventAway("load", "thermal-protection", "a load that is seldom so high"),
      ],
    },
  ],
  departures: [
    {
      when: any(is("joined", "crossed"), all(is("joined", "within"), held("bridge-alone", "improve"))),
      words: "the conductors do not form one plain ring of their own",
      regulations: ["433.1.204", "314.4"],
    },
    {
      when: all(is("joined", "within"), is("sections", "uneven")),
      words: "a bridge leaves a section without overload protection",
      regulations: ["433.1.204"],
    },
  ],
  client: {
    C2: "Two cable loops are joined, or one is bridged. A part may get too hot or stay live when off. Have it put right soon.",
    C3: "A cable loop has an extra link in it. It is not a danger now. It makes tests unsure and should be put right.",
    FI: [
      unsure(
        "We could not find out how a cable loop is joined. A part may stay live when it is off. This must be looked at.",
        ["joined"],
      ),
      unsure(
        "A cable loop has an extra link in it. We could not find out if that is safe. This must be looked at.",
        ["switching", "sections"],
        is("joined", "within", "crossed"),
      ),
    ],
    none: [
      says("The cable loop is joined as it should be.", is("joined", "none")),
      says("The extra link in the cable loop does no harm.", is("joined", "within")),
    ],
  },
  remedies: [
    {
      words: "Where two circuits are joined, put both on linked devices until they are parted.",
      changes: { switching: "together" },
    },
    {
      words: "Find the bridge by reading from point to point, part it and test the ring again.",
      changes: { joined: "none", sections: "even" },
    },
  ],
  examples: [
    {
      name: "two rings joined at one socket, separate breakers",
      facts: { joined: "crossed", switching: "apart", sections: "even" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a circuit switched off stays live; regulation 314.4",
    },
    {
      name: "figure of eight, sections within their capacity",
      facts: { joined: "within", sections: "even" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: defeats the tests",
    },
    {
      name: "the same held to be nothing",
      facts: { joined: "within", sections: "even" },
      positions: { "bridge-alone": "nothing" },
      possible: ["none"],
      source: "trade discussion of bridged rings",
    },
    {
      name: "bridge with a broken leg behind it",
      facts: { joined: "within", sections: "uneven" },
      possible: ["C2"],
      source: "trade practice: a section carries the whole load",
    },
    {
      name: "readings do not fit one ring, points not all reached",
      facts: {
        switching: "apart",
        joined: { notKnown: "limited", reason: "sockets behind fixed furniture" },
        sections: "even",
      },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over what is joined",
    },
    {
      name: "sections not reckoned",
      facts: { joined: "within" },
      possible: ["C3", "C2"],
      missing: ["sections"],
      source: "union over the sections",
    },
  ],
});
