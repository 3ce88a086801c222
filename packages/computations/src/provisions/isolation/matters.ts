import { matter } from "@good-grounds/core";

/** What is asked about isolation, and the questions answered. */
export const ISOLATION = Object.freeze({
  mainPresent: matter(
    "main-switch-present",
    "a main switch or circuit-breaker near the origin isolates the whole installation",
  ),
  poles: matter("switched-poles", "conductors that the main switch opens together"),
  ordinary: matter("ordinary-persons", "ordinary persons operate it, as in a home"),
  suitable: matter("device-isolates", "the device is one that serves for isolation"),
  kept: matter("kept-open", "it can be locked open, or stays in sight of whoever works"),
  otherSource: matter("other-source", "another source feeds the installation"),
  otherIsolated: matter("other-source-isolated", "every other source has its own means of isolation"),
  notice: matter("isolation-notice", "a notice tells of the other sources and how to isolate them"),
  notOrdinary: matter("not-ordinary-persons", "only skilled or instructed persons operate it"),
  noOther: matter("no-other-source", "no other source feeds the installation"),
  neutralMayStay: matter("neutral-may-stay", "who operates it, or the number of phases, lets the neutral stay closed"),
  holds: matter("isolation-means", "every supply can be isolated"),
  polesEnough: matter("poles-enough", "the main switch opens enough conductors"),
  others: matter("others-isolated", "other sources can be isolated and are announced"),
});
