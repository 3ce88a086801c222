import type { Misfit, Path } from "@good-grounds/core";
import { ringDrawing } from "../../drawings/ring.ts";
import type { ReportInput, ReportMisfit } from "../../input.ts";
import { MISFITS } from "../../locales/misfits-en.ts";
import { misfitTitle, misfitWords } from "../../words/misfit.ts";
import { placeWords } from "../../words/place.ts";
import type { Drawings } from "../drawings.ts";
import { keptWhole } from "../whole.ts";

/** Characters of a misfit that is kept on one page. */
const KEPT_WHOLE = 1200;

/** Readings that do not agree as far as the inspector chose to show them; nothing where nothing was chosen. */
export function misfits({ installation, misfits: found = [] }: ReportInput, drawings: Drawings) {
  const list = places(installation.file).flatMap(({ path, shared }) =>
    shared.flatMap(({ kind, note = "" }) => {
      const here = found.filter((one) => one.kind === kind && belongsTo(one, path));
      const rest = note === "" ? [] : [MISFITS.note(note)];
      if (here.length === 0)
        return [{ title: placeWords(path, installation), lines: [MISFITS.notFound, ...rest], drawing: "", shows: "" }];
      return here.map((one) => ({ title: misfitTitle(one), lines: [...lines(one), ...rest], ...drawn(one, drawings) }));
    }),
  );
  return {
    title: MISFITS.sharedTitle,
    intro: MISFITS.sharedIntro,
    list: list.map((one) => keptWhole(one, KEPT_WHOLE)),
  };
}

/** The drawing of a ring by name and in words; empty where there is none. */
function drawn({ ring }: ReportMisfit, drawings: Drawings) {
  return ring === undefined
    ? { drawing: "", shows: "" }
    : { drawing: drawings.add(ringDrawing(ring)), shows: MISFITS.ringShows(ring.circuit, ring.words) };
}

function lines(misfit: Misfit): readonly string[] {
  const { readings, explanations, next, rule, assumed, innocent } = misfitWords(misfit);
  return [...readings, ...explanations, ...next, innocent, rule, ...assumed];
}

function places({ supply, boards }: ReportInput["installation"]["file"]) {
  return [
    { path: ["supply"] as Path, shared: supply.sharedMisfits ?? [] },
    ...boards.flatMap((board, i) => [
      { path: ["boards", i] as Path, shared: board.sharedMisfits ?? [] },
      ...board.circuits.map((circuit, j) => ({
        path: ["boards", i, "circuits", j] as Path,
        shared: circuit.sharedMisfits ?? [],
      })),
    ]),
  ];
}

/** A misfit belongs to its circuit, else to its board, else to the supply. */
function belongsTo({ path }: Misfit, place: Path): boolean {
  const owner = path[0] === "supply" ? 1 : path[2] === "circuits" ? 4 : 2;
  return place.length === owner && place.every((step, i) => step === path[i]);
}
