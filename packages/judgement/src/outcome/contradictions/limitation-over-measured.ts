import { isKnown, isKnownFact, type Path } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import type { ContradictionRow } from "./row.ts";

type Has = (circuit: Circuit) => boolean;

/** Tests as limitations name them, and whether a circuit has one recorded. */
const TESTS: readonly { readonly named: RegExp; readonly has: Has }[] = [
  { named: /\binsulation(?: resistance)?\b/i, has: ({ readings }) => isKnown(readings.insulationLiveEarth) },
  { named: /\bpolarity\b/i, has: ({ readings }) => isKnownFact(readings.polarity) },
  { named: /\b(?:zs|loop impedance)\b/i, has: ({ readings }) => isKnown(readings.zs) },
  { named: /\bcontinuity\b/i, has: ({ readings: { r1r2, r2Only } }) => isKnown(r1r2) || isKnown(r2Only) },
  { named: /\brcds?\b/i, has: ({ residual }) => residual.devices.some(({ timeAtRated }) => isKnown(timeAtRated)) },
];

/** That a test was left out altogether: nothing of one room, one circuit or a part of it. */
const LEFT_OUT = /\b(?:not|no|never|without)\b/i;
const WHOLE =
  /\b(?:any|all|every|whole|throughout|none|no)\b|^[^,]*\bnot (?:tested|measured|taken|done|carried out)\.?$/i;
const PART = /\b(?:circuit|board|room|parlour|alarm|point|socket|kitchen|garage|shed|loft|part|some|between)s?\b/i;

/** A test that a limitation leaves out of the whole installation, and its reading at every circuit that was tested. */
export const LIMITATION_OVER_MEASURED: ContradictionRow = {
  id: "limitation-over-measured",
  find: ({ installation: { limitations, circuits } }) =>
    limitations.flatMap(({ what }, i) => {
      if (!LEFT_OUT.test(what) || !WHOLE.test(what) || PART.test(what)) return [];
      const measured = TESTS.filter(({ named }) => named.test(what)).flatMap(({ has }) => circuits.filter(has));
      const paths: Path[] = [...new Set(measured)].map(({ path }) => path);
      return paths.length === 0 ? [] : [{ places: [["limitations", i], ...paths] }];
    }),
};
