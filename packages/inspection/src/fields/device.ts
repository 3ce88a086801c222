import {
  BUTTON_RESULTS,
  DEVICE_DIRECTIONS,
  DEVICE_MATTER,
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  RCD_DELAYS,
  RCD_STANDARDS,
  RCD_TYPES,
  TERM,
  TESTABILITIES,
} from "@good-grounds/core";
import { quantityField, readingField, wordField, yesNoField } from "./make.ts";
import { MATTER } from "./matters.ts";

/** An overcurrent device, as it is marked. */
export const OVERCURRENT_DEVICE = Object.freeze({
  standard: wordField(MATTER.deviceStandard, DEVICE_STANDARDS, { label: "Standard" }),
  type: wordField(MATTER.deviceType, DEVICE_TYPES, { label: "Type" }),
  rated: quantityField(TERM.ratedCurrent, { label: "Rated current", meaning: "rated current" }),
  breakingCapacity: quantityField(TERM.breakingCapacity, {
    label: "Breaking capacity",
    meaning: "rated breaking capacity",
  }),
});

/** A residual current device, as it is marked. */
export const RESIDUAL_DEVICE = Object.freeze({
  standard: wordField(MATTER.rcdStandard, RCD_STANDARDS, { label: "Standard" }),
  type: wordField(MATTER.rcdType, RCD_TYPES, { label: "Type" }),
  delay: wordField(MATTER.rcdDelay, RCD_DELAYS, { label: "Delay" }),
  rated: quantityField(TERM.ratedCurrent, { label: "Rated current", meaning: "rated current" }),
  residual: quantityField(TERM.residualOperatingCurrent, { label: "IΔn", meaning: "rated residual operating current" }),
});

/** How a residual current device is fed, and whether it could be tested; its readings say what the tests showed. */
export const RESIDUAL_STATE = Object.freeze({
  direction: wordField(DEVICE_MATTER.direction, DEVICE_DIRECTIONS, {
    label: "May be fed",
    help: "one way where supply and load sides are marked",
  }),
  backfed: yesNoField(DEVICE_MATTER.backfed, { label: "A source can feed it from the load side" }),
  testability: wordField(DEVICE_MATTER.testability, TESTABILITIES, {
    label: "Test",
    help: "a device that cannot be tested is not shown to work",
  }),
});

/** What the tests of a residual current device showed. */
export const RESIDUAL_READINGS = Object.freeze({
  atRated: readingField(TERM.rcdTime, "rcd-time", {
    label: "at IΔn",
    help: "operating time",
    meaning: "operating time at the rated residual current",
  }),
  atFive: readingField(TERM.rcdTimeFive, "rcd-time", {
    label: "at 5 IΔn",
    meaning: "operating time at five times the rated residual current",
  }),
  button: wordField(MATTER.rcdButton, BUTTON_RESULTS, { label: "Test button" }),
});
