import { isKnown } from "@good-grounds/core";
import { expect, test } from "vitest";
import {
  cMax,
  cMin,
  declaredFaultCurrent,
  publicFrequency,
  publicNominalVoltage,
  supplyVoltageLimits,
  thumbFactor,
  typicalZe,
} from "./index.ts";

test.each([
  ["TN-C-S", 0.35],
  ["TN-S", 0.8],
  ["TT", 21],
] as const)("%s supplies are usually declared up to %d Ω", (system, ohms) => {
  expect(typicalZe(system)).toMatchObject({ value: ohms, detail: { source: { basis: "published" } } });
});

test("an IT system has no usual impedance", () => {
  expect(isKnown(typicalZe("IT"))).toBe(false);
});

test("230 V, 216.2 V to 253.0 V: six percent below, ten above, in whole tenths", () => {
  expect(publicNominalVoltage.value).toBe(230);
  expect(supplyVoltageLimits.least.value).toBe((2300 - 138) / 10);
  expect(supplyVoltageLimits.greatest.value).toBe((2300 + 230) / 10);
});

test("factors, and which of them were read", () => {
  const basis = (node: typeof cMin) => [node.value, node.detail.source.basis];
  expect([basis(cMin), basis(cMax), basis(thumbFactor)]).toEqual([
    [0.95, "published"],
    [1.1, "memory"],
    [0.8, "published"],
  ]);
  expect(thumbFactor.detail.source.doubt).toContain("rule of thumb");
});

test("the usual declared fault current and the frequency rest on memory", () => {
  expect(declaredFaultCurrent).toMatchObject({ value: 16000, detail: { source: { basis: "memory" } } });
  expect(publicFrequency).toMatchObject({
    value: 50,
    low: 49.5,
    high: 50.5,
    detail: { source: { basis: "memory" } },
  });
});
