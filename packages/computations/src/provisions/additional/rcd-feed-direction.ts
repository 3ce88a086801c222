import { isKnownFact } from "@good-grounds/core";
import { concluded } from "../../check.ts";
import { asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { ADDITIONAL } from "./matters.ts";

/**
 * Whether a device that a source can feed from its load side is made for it (530.3.201, since amendment 3): marked for
 * both directions, or not marked for one and its maker says so. Photovoltaics, batteries, vehicles and generators beyond
 * the device are such sources. Marks for in and out, line and load, or an arrow mean one direction.
 */
export const rcdFeedDirection = assessor({
  id: "rcd-feed-direction",
  provision: "additional-protection",
  title: "Device may be fed from both sides where it is",
  formula: "not fed from its load side, or made for both directions",
  regulations: ["530.3.201"],
  needs: {
    feed: asksYesNo(ADDITIONAL.feed),
    direction: asksWord(ADDITIONAL.direction, ["one-way", "both-ways", "not-marked"]),
    declared: asksYesNo(ADDITIONAL.declared, "asked where the device is not marked"),
  },
  conclude({ feed, direction, declared }, reckon) {
    const marked = wantsOneOf(reckon, ADDITIONAL.direction, direction, ["both-ways"]);
    const silent = isKnownFact(direction) && direction.word === "not-marked";
    return concluded(
      reckon.any(
        ADDITIONAL.feedSuits,
        wants(reckon, ADDITIONAL.noFeed, feed, false),
        silent ? wants(reckon, ADDITIONAL.declared, declared, true, "not marked") : marked,
      ),
    );
  },
  examples: [
    {
      name: "no source beyond",
      given: { feed: "no", direction: "one-way" },
      verdict: "met",
      source: "BS 7671 530.3.201",
    },
    {
      name: "battery beyond, both ways",
      given: { feed: "yes", direction: "both-ways" },
      verdict: "met",
      source: "BS 7671 530.3.201",
    },
    {
      name: "photovoltaics beyond, one way",
      given: { feed: "yes", direction: "one-way" },
      verdict: "not-met",
      source: "BS 7671 530.3.201",
    },
    {
      name: "not marked, maker not asked",
      given: { feed: "yes", direction: "not-marked" },
      verdict: "not-known",
      missing: ["type-declared"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
