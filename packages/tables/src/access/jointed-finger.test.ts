import { expect, test } from "vitest";
import { JOINTED_FINGER } from "./jointed-finger.ts";
import { accessProbe } from "./probes.ts";

test("the links of the finger add up to the length of its probe, and both have the same diameter and face", () => {
  const probe = accessProbe("B");
  expect(JOINTED_FINGER.links.reduce((sum, link) => sum + link)).toBe(probe.length);
  expect(JOINTED_FINGER.diameter).toBe(probe.diameter);
  expect(probe.stop).toContain(`${JOINTED_FINGER.stopFace[0]} mm × ${JOINTED_FINGER.stopFace[1]} mm`);
  expect(probe.stop).toContain(`${JOINTED_FINGER.bend}°`);
});
