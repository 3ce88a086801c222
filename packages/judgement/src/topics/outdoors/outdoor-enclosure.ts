import { any, is, NEVER, ranked, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A box, socket-outlet, switch or gland outdoors that does not keep water out. */
export const outdoorEnclosure = topic({
  id: "outdoor-enclosure",
  title: "Outdoor enclosure that lets water in",
  group: "outdoors",
  items: ["outdoors.weather", "accessories.external-influences"],
  facts: {
    closed: ranked({
      asks: "Does the enclosure keep rain out as it is: type, lid, seal, glands, unused holes?",
      effort: "glance",
      values: {
        kept: "the enclosure keeps rain out",
        worn: "a seal, lid or gland is perished, broken or missing",
        "indoor-type": "the enclosure is of an indoor type",
        "broken-open": "the enclosure is broken open, and a finger gets at live metal",
      },
    }),
    place: ranked({
      asks: "Does rain, spray or running water get to it?",
      effort: "glance",
      values: {
        sheltered: "it is sheltered from rain and spray",
        exposed: "rain or spray gets to it",
      },
    }),
    inside: ranked({
      asks: "What does it look like inside?",
      effort: "opened",
      values: {
        dry: "it is dry and clean inside",
        marks: "there are water marks or corrosion inside",
        wet: "water stands inside",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "water-gets-in",
      hazard: "contact-with-live-parts",
      route: "water bridges live parts and what somebody on wet ground touches",
      exists: any(is("closed", "worn", "indoor-type", "broken-open"), is("inside", "marks", "wet")),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "what the enclosure still keeps out",
          gone: NEVER,
          sound: NEVER,
          regulations: ["512.2.1", "522.3.1"],
        },
        {
          id: "shelter",
          provision: "surroundings",
          words: "a place that rain does not get to",
          gone: any(is("place", "exposed"), is("inside", "marks", "wet")),
          sound: NEVER,
          regulations: ["522.3.1"],
        },
      ],
    },
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal through the open enclosure",
      exists: is("closed", "broken-open"),
      layers: [
        {
          id: "cover",
          provision: "barrier-or-enclosure",
          words: "the cover of the enclosure",
          gone: is("closed", "broken-open"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("closed", "worn", "indoor-type", "broken-open"), is("inside", "marks", "wet")),
      words: "the enclosure does not keep water out",
      regulations: ["512.2.1", "522.3.1", "416.2.1"],
    },
  ],
  client: {
    C1: "Live metal can be touched in an outdoor box or socket. Keep away. Have it made safe now.",
    C2: "Water has got, or can get, into an outdoor box or socket. It could give a shock. Do not use it until it is changed.",
    C3: "An outdoor box or socket does not keep rain out. It is under cover, so it is not a danger now. A better one is advised.",
    FI: unsure("We could not find out if rain gets into an outdoor box or socket. This must be looked at soon.", [
      "closed",
      "place",
      "inside",
    ]),
    none: "The outdoor boxes and sockets keep the rain out.",
  },
  remedies: [
    {
      words: "Fit a new seal or gland, close unused holes, and replace corroded parts.",
      changes: { closed: "kept", inside: "dry" },
    },
    {
      words: "Replace it by one made for outdoors, or move the joint indoors.",
      changes: { closed: "kept", inside: "dry" },
    },
  ],
  examples: [
    {
      name: "socket-outlet with water marks, corrosion and a perished seal",
      facts: { closed: "worn", inside: "marks" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water reaches live parts in rain",
    },
    {
      name: "indoor junction box in the open, dry today",
      facts: { closed: "indoor-type", place: "exposed", inside: "dry" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water entry is to be expected",
    },
    {
      name: "the same in a sheltered spot, no sign of entry",
      facts: { closed: "indoor-type", place: "sheltered", inside: "dry" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: sheltered",
    },
    {
      name: "lid torn off, terminals in reach",
      facts: { closed: "broken-open" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "sound enclosure in the rain",
      facts: { closed: "kept", place: "exposed", inside: "dry" },
      possible: ["none"],
      source: "regulation: suited to its place",
    },
    {
      name: "not opened, sheltered",
      facts: { closed: "indoor-type", place: "sheltered" },
      possible: ["C3", "C2"],
      missing: ["inside"],
      source: "union over what opening would show",
    },
  ],
});
