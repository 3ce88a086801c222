import type { CheckLabel, Conclusion, Evidence, Path, Remark, Unit } from "@good-grounds/core";
import { argumentLines } from "../words/argument.ts";
import { bandWords, valueWords } from "../words/figure.ts";
import { givenName } from "../words/given-name.ts";
import { renderFinding } from "./finding.ts";
import { wrapped } from "./wrap.ts";

/** Where a figure given by hand stands: the name it was given by, and which of several. */
const given = (path: Path): string => (path.length === 0 ? "" : `given ${path.map(step).join(" ")}`);

function step(one: string | number): string {
  return typeof one === "number" ? `no. ${one + 1}` : givenName(one);
}

/** A check run with figures given by hand: the finding with its whole argument. */
export function renderConclusion(label: CheckLabel, conclusion: Conclusion, width = 80): string {
  const head = [
    ...wrapped(label.title, width),
    ...wrapped(label.formula, width, "  "),
    ...regulations(label, width),
    "",
  ];
  return `${[...head, ...renderFinding(label, conclusion, { width, place: given, grounds: true })].join("\n")}\n`;
}

/** A calculation run with figures given by hand: its results with what they came from. */
export function renderResults(
  label: CheckLabel,
  results: readonly Evidence<Unit>[],
  remarks: readonly Remark[],
  width = 80,
): string {
  const lines = [
    ...wrapped(label.title, width),
    ...wrapped(label.formula, width, "  "),
    ...regulations(label, width),
    "",
  ];
  for (const result of results) {
    const band = bandWords(result);
    const { term } = result;
    const name = term.symbol === "" ? term.name : `${term.symbol}, ${term.name}`;
    lines.push(...wrapped(`${name}: ${valueWords(result)}${band === "" ? "" : ` (${band})`}`, width, "", "  "));
    for (const line of argumentLines(result, given)) {
      const lead = "  ".repeat(Math.min(line.depth, 12) + 1);
      lines.push(
        ...wrapped(
          line.note === "" ? `[${line.tag}] ${line.words}` : `[${line.tag}] ${line.words} – ${line.note}`,
          width,
          lead,
          `${lead}    `,
        ),
      );
    }
  }
  for (const remark of remarks) lines.push(...wrapped(remark.words, width));
  return `${lines.join("\n")}\n`;
}

function regulations(label: CheckLabel, width: number): string[] {
  return label.regulations.length === 0 ? [] : wrapped(`BS 7671 ${label.regulations.join(", ")}`, width, "  ");
}
