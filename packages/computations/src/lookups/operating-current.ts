import { DEVICE_STANDARDS, DEVICE_TYPES, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { cMin, thumbFactor } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { operatingCurrentWithin } from "../circuits/device-figures.ts";
import { asksQuantity, asksWord } from "../need.ts";

/** Current in A that operates a device within a time, with the loop limit that follows, in Ω. */
export const operatingCurrentWithinTime = calculation({
  id: "operating-current",
  title: "Current that operates a device within a time",
  formula: "by the known points of the device",
  regulations: ["411.4.4"],
  needs: {
    standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
    type: asksWord(MATTER.deviceType, DEVICE_TYPES, "where the standard has several"),
    rated: asksQuantity(TERM.ratedCurrent, "32 A"),
    time: asksQuantity(TERM.disconnectionTime, "0.4 s"),
    nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V; for the limit of Zs"),
  },
  compute({ standard, type, rated, time, nominalVoltage }, reckon) {
    const trips = operatingCurrentWithin({ standard, type, rated }, time, reckon);
    const limit = reckon.quotient(TERM.permittedZs, reckon.product(TERM.loopVoltage, nominalVoltage, cMin), trips);
    return { results: [trips, limit, reckon.product(TERM.thumbZs, limit, thumbFactor)], remarks: [] };
  },
  examples: [
    {
      name: "B20",
      given: { standard: "BS EN 60898", type: "B", rated: "20 A", time: "0.4 s", nominalVoltage: "230 V" },
      values: { "permitted-zs": { value: 2.19, within: 0.01 } },
      source: "BS 7671 Table 41.3",
    },
    {
      name: "C32",
      given: { standard: "BS EN 60898", type: "C", rated: "32 A", time: "0.4 s", nominalVoltage: "230 V" },
      values: { "permitted-zs": { value: 0.68, within: 0.01 } },
      source: "BS 7671 Table 41.3",
    },
    {
      name: "20 A gG",
      given: { standard: "BS 88-2", rated: "20 A", time: "0.4 s", nominalVoltage: "230 V" },
      values: { "permitted-zs": { value: 1.68, within: 0.01 } },
      source: "BS 7671 Table 41.2",
    },
    {
      name: "100 A gG, 5 s",
      given: { standard: "BS 88-2", rated: "100 A", time: "5 s", nominalVoltage: "230 V" },
      values: { "permitted-zs": { value: 0.42, within: 0.01 } },
      source: "BS 7671 Table 41.4",
    },
    {
      name: "32 A system C and the rule of thumb",
      given: { standard: "BS 88-3", rated: "32 A", time: "0.4 s", nominalVoltage: "230 V" },
      values: { "thumb-zs": { value: 0.72, within: 0.01 } },
      source: "trade page printing 0.8 of the limit",
    },
    {
      name: "rewireable 30 A, 5 s",
      given: { standard: "BS 3036", rated: "30 A", time: "5 s", nominalVoltage: "230 V" },
      values: { "permitted-zs": { value: 2.51, within: 0.01 }, "operating-current": { value: 87, within: 0 } },
      source: "BS 7671 Table 41.4",
    },
    {
      name: "old type 2 breaker",
      given: { standard: "BS 3871", type: "2", rated: "15 A", time: "0.4 s", nominalVoltage: "230 V" },
      values: { "operating-current": { value: 105, within: 0 } },
      source: "BS 3871-1: type 2 trips at once by 7 times",
    },
    {
      name: "no point below 0.4 s for a fuse",
      given: { standard: "BS 1361", rated: "30 A", time: "0.2 s", nominalVoltage: "230 V" },
      missing: ["operating-current"],
      source: "no published point at hand",
    },
  ],
});
