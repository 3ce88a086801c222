import { ALWAYS, all, any, held, is, NEVER, no, not, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { DISTANCE } from "../contested.ts";
import { topic } from "../topic.ts";

/** Bare live parts that nothing encloses: they are only out of reach or behind an obstacle. */
export const livePartsOutOfReach = topic({
  id: "live-parts-out-of-reach",
  title: "Bare live parts guarded by distance or an obstacle only",
  group: "boards",
  items: ["boards.enclosure"],
  facts: {
    reach: ranked({
      asks: "From where people stand, is bare live metal within arm's reach (2.5 m upwards, 1.25 m sideways and down), counting what they carry?",
      effort: "measured",
      values: {
        beyond: "bare live metal is beyond arm's reach, counting what people carry",
        obstacle: "bare live metal is within arm's reach behind a fixed obstacle that keeps people from it by mistake",
        "long-objects": "bare live metal is beyond arm's reach, and ladders or long things are carried there",
        "in-reach": "bare live metal is within arm's reach, with nothing in the way",
      },
    }),
    control: ranked({
      asks: "Who gets to the place?",
      effort: "glance",
      values: {
        "skilled-only": "only skilled persons, or instructed persons under them, enter a locked place with a notice",
        "key-about": "the place is locked, and others can get the key",
        anyone: "anyone can enter the place",
      },
    }),
    notice: yesNo({
      asks: "Do notices warn of the bare live parts?",
      effort: "glance",
      yes: "notices warn of the bare live parts",
      no: "no notice warns of the bare live parts",
      worse: "no",
    }),
  },
  contested: { distance: DISTANCE },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches bare live metal, or brings something against it",
      exists: ALWAYS,
      layers: [
        {
          id: "distance",
          provision: "out-of-reach",
          words: "distance or an obstacle, which count only where skilled persons are in control",
          gone: any(
            is("reach", "in-reach"),
            all(not(is("control", "skilled-only")), held("distance", "does-not-count")),
          ),
          sound: all(is("reach", "beyond", "obstacle"), is("control", "skilled-only")),
          regulations: ["417.2", "417.3"],
        },
        {
          id: "control",
          provision: "restricted-access",
          words: "a lock and control by skilled persons",
          gone: not(is("control", "skilled-only")),
          sound: NEVER,
          regulations: ["417.1", "729.513"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(not(is("control", "skilled-only")), is("reach", "long-objects", "in-reach")),
      words: "bare live parts are guarded in a way that is allowed only under the control of skilled persons",
      regulations: ["417.1", "417.3"],
    },
    { when: no("notice"), words: "no notice warns of bare live parts", regulations: ["514.10.1"] },
  ],
  client: {
    C1: [
      says(
        "Bare live metal can be touched. This can kill. Keep everybody away. It must be made safe now.",
        is("reach", "in-reach"),
      ),
      says(
        "Only distance keeps people off bare live metal. This can kill. Keep everybody away. It must be made safe now.",
        is("reach", "beyond", "long-objects"),
      ),
      says(
        "Only a bar or the like keeps people off bare live metal. This can kill. Keep everybody away. It must be made safe now.",
        is("reach", "obstacle"),
      ),
      "Bare live metal is not kept from people well enough. This can kill. Keep everybody away. It must be made safe now.",
    ],
    C2: [
      says(
        "Only distance keeps people off bare live metal. A ladder or long tool could touch it. Have it covered soon.",
        all(is("reach", "beyond", "long-objects"), is("control", "key-about", "anyone")),
      ),
      says(
        "Only a bar or the like keeps people off bare live metal. Have it covered soon.",
        all(is("reach", "obstacle"), is("control", "key-about", "anyone")),
      ),
      says(
        "Bare live metal can be touched in a room for trained people. Have it covered soon.",
        is("reach", "in-reach"),
      ),
    ],
    C3: "Bare live metal is in a locked room for trained people. The warning or the guard could be better.",
    FI: [
      unsure("We could not find out if bare live metal can be reached. It must be looked at soon.", ["reach"]),
      unsure("We could not find out who can get to bare live metal. It must be looked at soon.", ["control"]),
    ],
    none: "The bare live parts are guarded, in a room for trained people only.",
  },
  remedies: [
    { words: "Put up lasting notices at every way in.", changes: { notice: "yes" } },
    {
      words: "Lock the place, and keep the key with skilled persons.",
      changes: { control: "skilled-only", notice: "yes" },
    },
    {
      words: "Enclose the live parts to IP2X or IPXXB, or have them replaced by enclosed ones.",
      changes: { reach: "beyond", control: "skilled-only", notice: "yes" },
    },
  ],
  examples: [
    {
      name: "bare crane conductors 4 m up, workshop open to all",
      facts: { reach: "beyond", control: "anyone" },
      possible: ["C1"],
      classification: "C1",
      source: "regulation 417.1: only under the control of skilled persons",
    },
    {
      name: "the same held to be one event away",
      facts: { reach: "beyond", control: "anyone" },
      positions: { distance: "counts" },
      possible: ["C2"],
      source: "trade discussion of height as a layer",
    },
    {
      name: "bare bars behind a rail, anyone enters",
      facts: { reach: "obstacle", control: "anyone", notice: true },
      possible: ["C1"],
      classification: "C1",
      source: "regulation 417.1: an obstacle is no measure where ordinary persons come",
    },
    {
      name: "locked switchroom, beyond reach, notices",
      facts: { reach: "beyond", control: "skilled-only", notice: true },
      possible: ["none"],
      source: "regulation 417.3",
    },
    {
      name: "within arm's reach in a place anyone enters",
      facts: { reach: "in-reach", control: "anyone" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: live parts in reach",
    },
    {
      name: "locked switchroom, no notice",
      facts: { reach: "beyond", control: "skilled-only", notice: false },
      possible: ["C3"],
      source: "regulation 514.10.1",
    },
    {
      name: "height not measured",
      facts: { control: "skilled-only", notice: true },
      possible: ["none", "C3", "C2"],
      missing: ["reach"],
      source: "union over the height",
    },
  ],
});
