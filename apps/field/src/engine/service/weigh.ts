import { type Finding, type Path, SEVERITY, type Verdict, type Weighing } from "@good-grounds/core";
import { resolveDraft } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { argumentLines, GRADE, placeWords, VERDICT } from "@good-grounds/report";
import { ENGINE } from "../../words/engine.ts";
import { draftOf } from "../draft.ts";
import { recordPath } from "../places.ts";
import type { Data } from "../protocol.ts";
import type { FindingView, Line, PlaceView, Trouble, ViewChange } from "../view.ts";
import type { Desk, Weighed } from "./desk.ts";
import { findingView } from "./finding-view.ts";
import { inWords } from "./trouble.ts";

export function weighData(desk: Desk, data: Data): ViewChange {
  const draft = draftOf(data);
  if (draft === undefined) throw new Error(ENGINE.unreadable);
  const { file, missing, left } = draft;
  const installation = resolveDraft(draft);
  const weighing = weigh(installation);
  const weighed = { installation, weighing };
  desk.weighed = weighed;
  const places = placesOf(weighed);
  return {
    missing: missing.map(({ path, words }) => ({
      path: recordPath(path, file),
      place: placeWords(path.slice(0, -1), installation),
      words: ENGINE.missing(words),
    })),
    trouble: left.map((issue): Trouble => inWords(issue, data, installation)),
    order: places.map(({ path }) => path),
    changed: places.filter((place) => {
      const text = JSON.stringify(place);
      if (desk.answered.get(place.path) === text) return false;
      desk.answered.set(place.path, text);
      return true;
    }),
  };
}

export function argumentOf({ weighed }: Desk, path: string, check: string): readonly Line[] {
  if (weighed === undefined) return [];
  const { installation, weighing } = weighed;
  const finding = allOf(weighing).find(
    (one) => one.check === check && recordPath(one.path, installation.file) === path,
  );
  if (finding === undefined) return [];
  const place = (at: Path) => placeWords(at, installation);
  return argumentLines(finding.judgement, place).map(({ depth, tag, words, note }) => ({ depth, tag, words, note }));
}

function allOf(weighing: Weighing): readonly Finding[] {
  return [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
}

/** Every place in the order of the installation, also one without findings. */
function placesOf({ installation, weighing }: Weighed): readonly PlaceView[] {
  const { file, supply, boards, circuits } = installation;
  const groups = [
    { path: supply.path, findings: weighing.supply },
    ...boards.map(({ path }, i) => ({ path, findings: weighing.boards[i] ?? [] })),
    ...circuits.map(({ path }, i) => ({ path, findings: weighing.circuits[i] ?? [] })),
  ];
  return groups.flatMap(({ path, findings }) => {
    const own = new Map<Path, Finding[]>([[path, []]]);
    for (const finding of findings) {
      const at = finding.path.length === path.length ? path : finding.path;
      own.set(at, [...(own.get(at) ?? []), finding]);
    }
    const views = [...own].map(([at, of]): PlaceView => {
      const shown = of.map(findingView);
      return {
        path: recordPath(at, file),
        kind: kindOf(at),
        name: placeWords(at, installation),
        ...worstIn(shown),
        findings: shown,
      };
    });
    const [first, ...parts] = views;
    if (first === undefined) return [];
    return [{ ...first, ...worstIn([...first.findings, ...parts.flatMap((part) => part.findings)]) }, ...parts];
  });
}

/** The worst verdict and its word for a row; where one of that verdict rests on what is expected, that too, shortly. */
function worstIn(findings: readonly FindingView[]): Pick<PlaceView, "worst" | "worstWord"> {
  const worst = worstOf(findings);
  const expected = findings.find((one) => one.verdict === worst && one.expected);
  return { worst, worstWord: expected === undefined ? VERDICT[worst] : `${VERDICT[worst]}, ${GRADE.expected}` };
}

export function worstOf(findings: readonly { readonly verdict: Verdict }[]): Verdict {
  return findings.reduce<Verdict>(
    (worst, { verdict }) => (SEVERITY[verdict] > SEVERITY[worst] ? verdict : worst),
    "not-applicable",
  );
}

function kindOf(path: Path): PlaceView["kind"] {
  if (path[0] === "supply") return path[1] === "bonding" ? "bond" : "supply";
  if (path.includes("rcds") || path.includes("rcd")) return "rcd";
  return path.includes("circuits") ? "circuit" : "board";
}
