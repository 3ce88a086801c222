import type { InspectionFile } from "@good-grounds/inspection";
import { drawnSignature } from "../../drawings/signature.ts";
import type { ReportInput } from "../../input.ts";
import { CAUTIONS } from "../../locales/en.ts";
import { SIGNATURE } from "../../locales/outcome-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { standingSignatures } from "../../words/signature.ts";
import { type Cell, cell, cellOr, gap } from "../cell.ts";
import type { Drawings } from "../drawings.ts";

/** Guidance for whoever receives the report, and the cautions that belong to it. */
export function recipients({ edition, installation }: ReportInput) {
  const { nation } = installation.file.brief;
  return {
    title: REPORT.recipientsTitle,
    paragraphs: REPORT.recipients(edition.label),
    "cautions-title": REPORT.cautionsTitle,
    cautions: [
      CAUTIONS.competent,
      CAUTIONS.danger(typeof nation === "string" ? nation : undefined),
      CAUTIONS.isolation,
      CAUTIONS.dates,
      REPORT.printing,
    ],
  };
}

/**
 * Who signed, as what and when, with the signature where one was drawn. What was not signed for this content does not
 * look like a signature: it is told in words and not drawn.
 */
export function signatures(input: ReportInput, drawings: Drawings) {
  const { file } = input.installation;
  const standing = standingSignatures(file);
  const stands = standing.filter((one) => one.standing === "signed");
  const missing = Object.entries(REPORT.capacity).filter(
    ([capacity]) => !file.signatures.some((one) => one.capacity === capacity),
  );
  return {
    title: REPORT.signaturesTitle,
    conclusion: conclusionRows(input),
    words: REPORT.signatures,
    state: file.signatures.length === 0 ? REPORT.unsigned : stands.length === 0 ? REPORT.notSigned : "",
    note: stands.length > 0 ? REPORT.contentNote : "",
    rows: [
      ...standing.map(({ signature, standing: how, name }) => {
        const { person, capacity, at, content, drawn } = signature;
        const words = REPORT.drawnSignature(name);
        const signed =
          how === "signed"
            ? cell([REPORT.moment(at), REPORT.signedContent((content ?? "").slice(0, 16))].join("; "))
            : gap(SIGNATURE[how](name, REPORT.moment(at)));
        return {
          as: REPORT.capacity[capacity],
          cells: [...personRows(file, person, name), [REPORT.signedAs.signed, signed] as const],
          drawn: drawn === undefined || how !== "signed" ? "" : drawings.add(drawnSignature(drawn, words)),
          // Who signed without drawing signed by name; what does not stand shows no name on the line.
          typed: how === "signed" && drawn === undefined ? name : "",
          words,
        };
      }),
      ...missing.map(([, as]) => ({
        as,
        cells: [[REPORT.signedAs.signed, gap(REPORT.unsigned)] as const],
        drawn: "",
        typed: "",
        words: "",
      })),
    ],
    "attachments-title": REPORT.attachmentsTitle,
    "attachments-head": REPORT.attachmentsHead,
    attachments: [
      ["inspection.json", REPORT.attachment],
      ["workings.html", REPORT.workings],
    ] as const,
  };
}

type SignedRow = readonly [label: string, cell: Cell];

function personRows(file: InspectionFile, id: string, name: string): readonly SignedRow[] {
  const found = file.people.find((one) => one.id === id);
  const words = REPORT.signedAs;
  return [
    [words.name, cell(name)],
    [words.position, cellOr(found?.position)],
    [words.firm, cellOr([found?.firm, ...(found?.address ?? [])].filter(Boolean).join(", "))],
    [words.registration, cellOr(found?.registration)],
  ];
}

/** What is concluded, in full: the first page has it shortened. */
function conclusionRows({ installation: { file }, issue }: ReportInput): readonly SignedRow[] {
  const words = REPORT.conclusion;
  const { outcome, generalCondition, workWithin, nextInspection } = file.conclusion ?? {};
  return [
    ...(issue === undefined ? [] : ([[words.issue, cell(REPORT.issue(issue.number, issue.replaces))]] as const)),
    [words.stated, outcome === undefined ? gap(REPORT.notStated) : cell(REPORT.outcome[outcome])],
    [words.condition, cellOr(generalCondition)],
    [
      words.next,
      nextInspection === undefined ? gap(REPORT.noNext) : cell(REPORT.next(nextInspection.by, nextInspection.reason)),
    ],
    ...(workWithin === undefined
      ? []
      : ([[words.within, cell([words.days(workWithin.days), workWithin.reason].filter(Boolean).join(". "))]] as const)),
    ...(file.decisionRule === undefined ? [] : ([[words.rule, cell(words.rules[file.decisionRule])]] as const)),
  ];
}
