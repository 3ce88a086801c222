import type { Finding } from "@good-grounds/core";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { argumentLines } from "../../words/argument.ts";
import { placeWords } from "../../words/place.ts";
import { verdictOf } from "../../words/verdict.ts";
import { worstFirst } from "../../words/worst-first.ts";
import { places } from "./findings.ts";
import { figuresFromMemory, titleOf } from "./reading-finding.ts";

const WORDS = REPORT.workingsPage;

/** Every calculation that arises with its whole argument, place by place, the worst of a place first. */
export function workings(input: ReportInput) {
  return {
    title: WORDS.title(input.installation.file.id),
    kind: WORDS.kind,
    intro: WORDS.intro,
    places: places(input).flatMap(({ heading, findings }) => {
      const arising = findings.filter(({ judgement }) => judgement.verdict !== "not-applicable");
      if (arising.length === 0) return [];
      return [
        { heading, findings: [...arising].sort(worstFirst(input.checks)).map((finding) => workingOf(input, finding)) },
      ];
    }),
  };
}

function workingOf({ installation, checks }: ReportInput, { check, path, judgement }: Finding) {
  const label = checks.find(({ id }) => id === check);
  const figures = judgement.verdict === "not-known" ? [] : figuresFromMemory(judgement);
  return {
    title: titleOf(checks, check),
    verdict: verdictOf(judgement),
    rule: [REPORT.regulations(label?.regulations ?? []), label?.formula ?? ""].filter((part) => part !== "").join("; "),
    memory: figures.length === 0 ? "" : REPORT.memory(figures),
    at: placeWords(path, installation),
    argument: argumentLines(judgement, (at) => placeWords(at, installation)),
  };
}

/** Figures from memory that a conclusion of the report rests on, each once: for the inspector, before anything is issued. */
export function fromMemory({ weighing }: Pick<ReportInput, "weighing">): readonly string[] {
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const resting = all.filter(({ judgement: { verdict } }) => verdict !== "not-known" && verdict !== "not-applicable");
  return [...new Set(resting.flatMap(({ judgement }) => figuresFromMemory(judgement)))].sort();
}
