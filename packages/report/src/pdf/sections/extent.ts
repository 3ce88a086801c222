import { FIELDS_AT } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { type Cell, cell, cellOr, gap } from "../cell.ts";
import { type Row, recordedLine, recordedRows } from "../recorded.ts";
import { capitalised } from "./observation-order.ts";

/** What was agreed, what was sampled, and what could not be seen and why. */
export function extent({ installation, samples }: ReportInput) {
  const { extent: e, limitations } = installation.file;
  return {
    title: REPORT.extentTitle,
    rows: particulars(installation),
    "sampling-title": REPORT.samplingTitle,
    "sampling-head": REPORT.samplingHead,
    sampling: e.sampling.map(({ what, population, inspected, defective, how }, i) => [
      cell(what),
      cell(String(population)),
      cell(String(inspected)),
      cell(String(defective)),
      sampleCell(samples[i] ?? null, population),
      cellOr(how),
    ]),
    "limitations-title": REPORT.limitationsTitle,
    "limitations-head": REPORT.limitationsHead,
    "no-limitations": REPORT.noLimitations,
    concealed: REPORT.concealed,
    limitations: limitations.map(({ kind, what, why, agreedWith }) => [
      cell(REPORT.limitationKind[kind]),
      cell(what),
      cell(why),
      cellOr(agreedWith, REPORT.agreedWithNobody),
    ]),
  };
}

/** What is recorded of the letting. */
function lettingRows(written: Brief["letting"], resolved: object): readonly Row[] {
  const words = REPORT.extent;
  const days = [
    [words.starts, written?.starts],
    [words.granted, written?.granted],
    [words.equipmentChecked, written?.equipmentChecked],
  ] as const;
  return [
    ...recordedRows(FIELDS_AT["brief/letting"], { ...resolved }),
    ...days.flatMap(([label, day]): readonly Row[] => (day === undefined ? [] : [[label, cell(REPORT.day(day))]])),
  ];
}

type Brief = ReportInput["installation"]["file"]["brief"];

function sampleCell(reach: ReportInput["samples"][number], population: number): Cell {
  return reach === null ? gap("–") : cell(REPORT.sampleReach(reach.most, population));
}

function particulars({ file, letting: resolved }: ReportInput["installation"]): readonly Row[] {
  const { extent: e, brief, visits, conditions } = file;
  const words = REPORT.extent;
  const agreed = [e.agreedWith, e.agreedOn === undefined ? undefined : REPORT.day(e.agreedOn)].filter(Boolean);
  const records = brief.records.map(({ kind, date, reference }) =>
    [kind, date === undefined ? "" : REPORT.day(date), reference].filter(Boolean).join(", "),
  );
  const on = visits.map(({ date, arrived, left, note }) =>
    [REPORT.visit(date, arrived?.slice(11, 16) ?? "", left?.slice(11, 16) ?? ""), note].filter(Boolean).join(", "),
  );
  const { client, premises } = brief;
  const unknown = [
    ...(typeof brief.use === "string" ? [] : [words.useNotKnown(brief.use.reason)]),
    ...(typeof brief.tenure === "string" ? [] : [words.tenureNotKnown(brief.tenure.reason)]),
    ...(typeof brief.nation === "string" ? [] : [words.nationNotKnown(brief.nation.reason)]),
  ];
  const known = [brief.use, brief.tenure, brief.nation].flatMap((word) =>
    typeof word === "string" ? [capitalised(word.replaceAll("-", " "))] : [],
  );
  const letting = lettingRows(file.brief.letting, resolved);
  return [
    ...(file.title === undefined ? [] : ([[words.title, cell(file.title)]] as const)),
    [words.client, cell(REPORT.ordered(client.name, (client.address ?? []).join(", ")))],
    [words.purpose, cell(brief.purpose)],
    [
      words.premises,
      cell(
        [
          premises.address.join(", "),
          premises.description,
          premises.uprn === undefined ? "" : REPORT.uprn(premises.uprn),
        ]
          .filter(Boolean)
          .join("; "),
      ),
    ],
    [words.occupier, cellOr(premises.occupier)],
    [words.use, cell([...known, ...unknown].join("; "))],
    ...(letting.length === 0 ? [] : ([[words.letting, recordedLine(letting)]] as const)),
    [words.covered, cell(e.covered)],
    [words.notCovered, cellOr(e.notCovered)],
    [words.agreed, agreed.length === 0 ? gap(REPORT.notAgreed) : cell(agreed.join(", "))],
    [words.visits, cell(on.join("; "))],
    ...(conditions?.note === undefined ? [] : ([[words.conditions, cell(conditions.note)]] as const)),
    [words.age, cellOr(brief.ageOfInstallation)],
    [words.alterations, cellOr(brief.alterations)],
    [
      words.last,
      brief.lastInspection === undefined ? gap(REPORT.silence.absent) : cell(REPORT.day(brief.lastInspection)),
    ],
    [words.records, records.length === 0 ? gap(REPORT.noRecords) : cell(records.join("; "))],
  ];
}
