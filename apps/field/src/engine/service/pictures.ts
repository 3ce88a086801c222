import { curvesOf, mostDefective } from "@good-grounds/computations";
import { SEVERITY } from "@good-grounds/core";
import { lineDiagram, placeWords, timeCurrentCurve } from "@good-grounds/report";
import { ENGINE } from "../../words/engine.ts";
import type { Pictures } from "../picture-view.ts";
import { recordPath } from "../places.ts";
import type { Desk } from "./desk.ts";
import { findingView } from "./finding-view.ts";
import { ringsOf } from "./rings.ts";
import { worstOf } from "./weigh.ts";

/** The assurance with which a sample is said to leave something open: the usual one of statistics. */
const ASSURANCE = 0.95;

/** Rows of one drawing: as many as can be taken in at once on a phone held upright. */
const ROWS = 24;

export function picturesOf({ weighed }: Desk): Pictures {
  if (weighed === undefined) return { diagram: [], curves: [], rings: [], samples: [] };
  const { installation, weighing } = weighed;
  const { file } = installation;
  const findingsOf = new Map(installation.circuits.map(({ path }, i) => [path, weighing.circuits[i] ?? []]));
  return {
    diagram: lineDiagram(installation, {
      verdictOf: (path) => worstOf((findingsOf.get(path) ?? []).map(findingView)),
      rowsPerDrawing: ROWS,
    }),
    curves: installation.circuits
      .map((circuit) => ({ circuit, findings: findingsOf.get(circuit.path) ?? [] }))
      // A circuit of which nothing was measured yet is not in doubt, it is untouched.
      .filter(({ findings }) => findings.some(({ judgement }) => SEVERITY[judgement.verdict] > SEVERITY["not-known"]))
      .flatMap(({ circuit, findings }) => curvesOf(circuit, findings, installation))
      .map((curves) => ({
        path: recordPath(curves.circuit, file),
        name: `${placeWords(curves.circuit, installation)}: ${curves.device}`,
        svg: timeCurrentCurve(curves),
      })),
    rings: ringsOf(installation),
    samples: (file.extent?.sampling ?? []).map(({ what, population, inspected, defective }) => ({
      what,
      seen: ENGINE.sampled(inspected, population, defective),
      leaves:
        population < 1 || inspected > population || defective > inspected
          ? ENGINE.notASample
          : ENGINE.leaves(mostDefective(population, inspected, defective, ASSURANCE), population, ASSURANCE * 100),
    })),
  };
}
