import { matter } from "@good-grounds/core";

/** What is asked about enclosures as a whole, obstacles, and the questions answered. */
export const ENCLOSING = Object.freeze({
  opensBy: matter("opens-by", "what opens or removes the barrier or enclosure"),
  deadFirst: matter(
    "dead-first",
    "it opens only after the live parts are disconnected, and they stay so until it is shut",
  ),
  barrierWithin: matter(
    "barrier-within",
    "a barrier of at least IPXXB lies behind it and comes off only by a key or tool",
  ),
  excepted: matter("excepted-accessory", "lampholder, ceiling rose or pull switch that the note to 416.2.4 leaves out"),
  opening: matter("opens-deliberately", "the enclosure opens only on purpose"),
  firm: matter("barrier-firm", "barriers and enclosures are fixed firmly"),
  complete: matter("enclosure-complete", "every part is there: covers, blanks, lids, screws, grommets"),
  undamaged: matter("enclosure-undamaged", "no crack, hole or break"),
  lock: matter("door-lock", "lock or catch of the door"),
  hinges: matter("door-hinges", "hinges of the door"),
  secured: matter("barrier-secured", "barriers and enclosures are firm, whole and lasting"),
  purpose: matter("opening-purpose", "what the larger opening is for"),
  precaution: matter("opening-precaution", "something keeps people from touching live parts there by accident"),
  aware: matter("opening-aware", "people will know that live parts can be touched there"),
  noLarger: matter("opening-no-larger", "the opening is no larger than its purpose needs"),
  larger: matter("larger-opening", "a larger opening is allowed here"),
  supervision: matter("skilled-control", "who controls or supervises the place"),
  stopsApproach: matter("stops-approach", "the obstacle stops people coming near by accident"),
  operated: matter("operated-live", "equipment behind the obstacle is operated while live"),
  notOperated: matter("not-operated-live", "nothing behind the obstacle is operated while live"),
  stopsContact: matter("stops-contact", "the obstacle stops accidental contact while operating"),
  secure: matter("obstacle-secure", "the obstacle cannot be removed by accident"),
  obstacle: matter("obstacle", "obstacles protect here"),
  onlySkilled: matter("only-skilled", "only skilled persons, or others under their eye, come here"),
  duringOperation: matter("contact-during-operation", "no accidental contact during operation"),
});
