import { timeCurrentCurve } from "../../drawings/time-current.ts";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { placeWords } from "../../words/place.ts";
import type { Drawings } from "../drawings.ts";

/** Time-current drawings of the circuits in doubt. */
export function curves({ curves: list, installation }: ReportInput, drawings: Drawings) {
  return {
    title: REPORT.curvesTitle,
    intro: REPORT.curvesIntro,
    list: list.map((one) => ({
      caption: `${placeWords(one.circuit, installation)}: ${one.device}`,
      file: drawings.add(timeCurrentCurve(one)),
      words: REPORT.curveWords(one.device, one.conductor),
      memory: one.points.some(({ basis }) => basis === "memory") ? REPORT.curveFromMemory : "",
    })),
  };
}
