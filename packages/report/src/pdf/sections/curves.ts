import { timeCurrentCurve } from "../../drawings/time-current.ts";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { placeWords } from "../../words/place.ts";
import type { Drawings } from "../drawings.ts";
import { legibleWidth } from "../legible.ts";

/** Drawings printed; an installation may have a circuit in doubt for every one of hundreds. */
const PRINTED = 24;

/** Time-current drawings of the circuits in doubt. */
export function curves({ curves: list, installation }: ReportInput, drawings: Drawings) {
  return {
    title: REPORT.curvesTitle,
    intro: REPORT.curvesIntro,
    more: list.length > PRINTED ? REPORT.moreCurves(list.length - PRINTED) : "",
    list: list.slice(0, PRINTED).map((one) => ({
      caption: `${placeWords(one.circuit, installation)}: ${one.device}`,
      ...drawn(timeCurrentCurve(one), drawings),
      words: REPORT.curveWords(one.device, one.conductor),
    })),
  };
}

function drawn(svg: string, drawings: Drawings) {
  return { file: drawings.add(svg), width: legibleWidth(svg) };
}
