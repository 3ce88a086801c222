import { all, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";
import { ACCESS } from "./facts.ts";

/** A fuse carrier that is cracked, chipped, held in by tape, or gone. */
export const fuseCarrierBroken = topic({
  id: "fuse-carrier-broken",
  title: "Fuse carrier broken, unshielded or missing",
  group: "boards",
  items: ["boards.enclosure", "boards.devices"],
  facts: {
    carrier: ranked({
      asks: "In what state is the carrier, or the way without one?",
      effort: "glance",
      values: {
        whole: "the carrier is whole and firm, or an empty way is closed by a blank",
        chipped: "the carrier is chipped where it shields nothing",
        unshielded: "the carrier is whole, and live contacts can be touched while it is drawn",
        cracked: "the carrier is cracked, loose or mended with tape",
        missing: "the carrier is missing and the way is open",
      },
    }),
    "finger-reaches-live": yesNo({
      asks: "Does the jointed test finger touch live metal with the carrier in place, or in the way that has none?",
      effort: "glance",
      yes: "a finger touches live metal there",
      no: "a finger does not touch live metal there",
      worse: "yes",
    }),
    access: ACCESS,
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal at the carrier or in the open way",
      exists: not(is("access", "locked-off")),
      layers: [
        {
          id: "carrier",
          provision: "barrier-or-enclosure",
          words: "the carrier that closes the way",
          gone: yes("finger-reaches-live"),
          sound: all(no("finger-reaches-live"), is("carrier", "whole", "chipped")),
          regulations: ["416.2.1"],
        },
        {
          id: "lock",
          provision: "restricted-access",
          words: "a lock that keeps ordinary persons away",
          gone: not(is("access", "skilled-only")),
          sound: NEVER,
          regulations: ["416.2.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("carrier", "whole")),
      words: "a fuse carrier is not whole",
      regulations: ["416.2.3"],
    },
    {
      when: yes("finger-reaches-live"),
      words: "the enclosure does not give IP2X or IPXXB",
      regulations: ["416.2.1"],
    },
  ],
  dangers: [
    {
      id: "live-metal",
      least: "C2",
      when: yes("finger-reaches-live"),
      words:
        "live metal can be touched with the board as it stands; a lock or a switch that is off is one event from danger",
      regulations: ["416.1", "416.2.1"],
    },
  ],
  client: {
    C1: "Live metal can be touched at a fuse holder. It can kill. Keep away. It must be made safe today.",
    C2: [
      says(
        "A fuse holder is cracked or gone. It could let you touch live metal. Replace it soon.",
        all(no("finger-reaches-live"), is("carrier", "cracked", "missing")),
      ),
      says(
        "When a fuse is taken out, live metal can be touched. Replace the holder soon.",
        all(no("finger-reaches-live"), is("carrier", "unshielded")),
      ),
      says(
        "Live metal can be touched at a fuse holder. The fuse box is out of use and locked. Replace the holder soon, before the box is used again.",
        all(yes("finger-reaches-live"), is("access", "locked-off")),
      ),
      says(
        "Live metal can be touched at a fuse holder. A lock keeps people away. Replace it soon.",
        yes("finger-reaches-live"),
      ),
    ],
    C3: [
      says(
        "A fuse holder is chipped. It still keeps you safe. A new one would be good.",
        all(no("finger-reaches-live"), is("carrier", "chipped")),
      ),
      says(
        "A fuse holder is not as it should be. The box is out of use and locked. Put it right before it is used again.",
        is("access", "locked-off"),
      ),
      says(
        "A fuse holder is not as it should be. It stands behind a lock. A new one would be good.",
        is("access", "skilled-only"),
      ),
    ],
    FI: [
      unsure(
        "A fuse holder is not as it should be. We could not find out if live metal can be touched. It must be looked at soon.",
        ["finger-reaches-live"],
        is("carrier", "chipped", "unshielded", "cracked", "missing"),
      ),
      unsure("We could not find out if a fuse holder is safe. It must be looked at soon.", [
        "finger-reaches-live",
        "carrier",
        "access",
      ]),
    ],
    none: "The fuse holders are whole.",
  },
  remedies: [
    {
      words: "Fit a whole carrier of the same pattern, or a blank in an empty way.",
      changes: { carrier: "whole", "finger-reaches-live": "no" },
    },
    {
      words: "Where none is to be had, move the circuit and close the way, or replace the board.",
      changes: { carrier: "whole", "finger-reaches-live": "no" },
    },
  ],
  examples: [
    {
      name: "live contacts can be touched while a fuse is changed, in a home",
      facts: { carrier: "unshielded", "finger-reaches-live": false, access: "anyone" },
      possible: ["C2"],
      source: "trade discussion: live parts on changing a fuse",
    },
    {
      name: "carrier gone, contacts open, hallway",
      facts: { carrier: "missing", "finger-reaches-live": true, access: "anyone" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: nothing stands between a finger and live metal",
    },
    {
      name: "cracked across, taped",
      facts: { carrier: "cracked", "finger-reaches-live": false, access: "anyone" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: it breaks when next drawn",
    },
    {
      name: "corner chipped",
      facts: { carrier: "chipped", "finger-reaches-live": false, access: "anyone" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "missing, reach not tried",
      facts: { carrier: "missing", access: "anyone" },
      possible: ["C2", "C1"],
      missing: ["finger-reaches-live"],
      source: "union over what the finger would show",
    },
  ],
});
