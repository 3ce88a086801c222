import {
  BUTTON_RESULTS,
  DEVICE_MATTER,
  DEVICE_STANDARDS,
  INDICATORS,
  SURGE_CONNECTIONS,
  SURGE_TYPES,
  TERM,
  TESTABILITIES,
} from "@good-grounds/core";
import { quantityField, wordField, yesNoField } from "../make.ts";

/** A surge protective device. One that was looked for and is not there is recorded as not fitted. */
export const SURGE_DEVICE = Object.freeze({
  fitted: yesNoField(DEVICE_MATTER.fitted, { label: "Fitted" }),
  type: wordField(DEVICE_MATTER.surgeType, SURGE_TYPES, { label: "Type" }),
  indicator: wordField(DEVICE_MATTER.indicator, INDICATORS, { label: "Indicator" }),
  connection: wordField(DEVICE_MATTER.surgeConnection, SURGE_CONNECTIONS, { label: "Connected" }),
  leads: quantityField(TERM.surgeLeads, { label: "Length of its leads" }),
  backupStandard: wordField(DEVICE_MATTER.backupStandard, DEVICE_STANDARDS, { label: "Protected by" }),
  backupRated: quantityField(TERM.ratedCurrent, { label: "Rated current of that" }),
});

/** An arc fault detection device. */
export const ARC_DEVICE = Object.freeze({
  fitted: yesNoField(DEVICE_MATTER.fitted, { label: "Fitted" }),
  rated: quantityField(TERM.ratedCurrent, { label: "Rated current" }),
  testability: wordField(DEVICE_MATTER.testability, TESTABILITIES, { label: "Test" }),
  button: wordField(DEVICE_MATTER.button, BUTTON_RESULTS, { label: "Test button" }),
  indicator: wordField(DEVICE_MATTER.indicator, INDICATORS, { label: "Indicator" }),
});
