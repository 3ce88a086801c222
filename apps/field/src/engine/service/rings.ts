import type { Installation } from "@good-grounds/inspection";
import { lookAtRings } from "@good-grounds/readings";
import { placeWords, ringDrawing, ringDrawingOf, ringSentences } from "@good-grounds/report";
import type { RingPicture } from "../picture-view.ts";
import { recordPath } from "../places.ts";

/** The rings that were read at their points, each with what explains its readings. */
export function ringsOf(installation: Installation): readonly RingPicture[] {
  return lookAtRings(installation)
    .filter(({ points }) => points.length > 0)
    .map((ring) => ({
      path: recordPath(ring.circuit, installation.file),
      name: placeWords(ring.circuit, installation),
      svg: ringDrawing(ringDrawingOf(ring)),
      words: ringSentences(ring),
    }));
}
