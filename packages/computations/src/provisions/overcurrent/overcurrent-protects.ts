import { concluded } from "../../check.ts";
import { breakingCapacity } from "../../checks/breaking-capacity.ts";
import { cableCapacity } from "../../checks/cable-capacity.ts";
import { asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants } from "../verdicts.ts";
import { OVERCURRENT } from "./matters.ts";

const RING = {
  shape: "ring",
  load: "socket-outlets",
  phases: "1",
  standard: "BS EN 60898",
  rated: "32 A",
  kind: "flat-twin-and-cpc",
  insulation: "70C-thermoplastic",
  material: "copper",
  line: "2.5 mm²",
  methods: ["C"],
  faultCurrent: "1.8 kA",
  measuredHere: "yes",
  breakingCapacity: "6 kA",
} as const;
const SOUND = { present: "yes", element: "yes", fusedNeutral: "no" } as const;

/**
 * Protection against overcurrent: a device in every line conductor (431.1.1), its element that of its marked rating
 * (533.1.1.3), none in the neutral by itself (431.2, 530.3.3), the cable protected against overload (433, as
 * `cable-capacity` concludes) and the fault current within what the device breaks (434.5.1, as `breaking-capacity`
 * concludes). Units as in those checks. A fuse wire heavier than marked fails here whatever the marking says.
 */
export const overcurrentProtects = assessor({
  id: "overcurrent-protects",
  provision: "overcurrent-protection",
  title: "Overcurrent is broken before it does harm",
  formula: "device in each line, element as marked, In ≤ Iz, Ipf ≤ Icn",
  regulations: ["431.1.1", "431.2", "433.1.1", "434.5.1", "530.3.3", "533.1.1.3"],
  needs: {
    ...breakingCapacity.needs,
    ...cableCapacity.needs,
    present: asksYesNo(OVERCURRENT.present),
    element: asksYesNo(OVERCURRENT.element),
    fusedNeutral: asksYesNo(OVERCURRENT.fusedNeutral),
  },
  conclude(given, reckon) {
    const overload = cableCapacity.conclude(given, reckon);
    const breaks = breakingCapacity.conclude(given, reckon);
    return concluded(
      reckon.all(
        OVERCURRENT.holds,
        wants(reckon, OVERCURRENT.present, given.present),
        wants(reckon, OVERCURRENT.element, given.element),
        wants(reckon, OVERCURRENT.neutralUnfused, given.fusedNeutral, false),
        overload.judgement,
        breaks.judgement,
      ),
      [...overload.beside, ...breaks.beside],
      [...overload.remarks, ...breaks.remarks],
    );
  },
  examples: [
    {
      name: "32 A ring clipped direct",
      given: { ...RING, ...SOUND },
      verdict: "met",
      source: "27 A is more than 20 A (433.1.204); 1.8 kA is less than 6 kA",
    },
    {
      name: "fuse wire heavier than marked",
      given: { ...RING, ...SOUND, element: "no" },
      verdict: "not-met",
      source: "BS 7671 533.1.1.3",
    },
    {
      name: "fuses in line and neutral",
      given: { ...RING, ...SOUND, fusedNeutral: "yes" },
      verdict: "not-met",
      source: "BS 7671 530.3.3",
    },
    {
      name: "fault current beyond the device",
      given: { ...RING, ...SOUND, faultCurrent: "7.7 kA" },
      verdict: "not-met",
      source: "BS 7671 434.5.1: 7.7 kA is more than 6 kA",
    },
    {
      name: "element not drawn",
      given: { ...RING, present: "yes", fusedNeutral: "no" },
      verdict: "not-known",
      missing: ["element-as-rated"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
