import type { ReportInput } from "../../input.ts";
import { CAUTIONS } from "../../locales/en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { cell, cellOr, gap } from "../cell.ts";
import { nameOf } from "./frame.ts";

/** Guidance for whoever receives the report, and the cautions that belong to it. */
export function recipients({ edition }: ReportInput) {
  return {
    title: REPORT.recipientsTitle,
    paragraphs: REPORT.recipients(edition.label),
    "cautions-title": REPORT.cautionsTitle,
    cautions: [CAUTIONS.competent, CAUTIONS.danger, CAUTIONS.isolation, CAUTIONS.dates, REPORT.printing],
  };
}

/** Who signed, as what and when. */
export function signatures({ installation }: ReportInput) {
  const { file } = installation;
  return {
    title: REPORT.signaturesTitle,
    words: file.signatures.length === 0 ? REPORT.unsigned : REPORT.signatures,
    head: REPORT.signaturesHead,
    rows: file.signatures.map(({ person, capacity, at }) => {
      const found = file.people.find(({ id }) => id === person);
      const firm = [found?.firm, ...(found?.address ?? [])].filter(Boolean).join(", ");
      return [
        cell(REPORT.capacity[capacity]),
        cell([nameOf(file, person), found?.position].filter(Boolean).join(", ")),
        firm === "" && found?.registration === undefined
          ? gap(REPORT.silence.absent)
          : cellOr([firm, found?.registration].filter(Boolean).join("; ")),
        cell(REPORT.moment(at)),
      ];
    }),
    "attachments-title": REPORT.attachmentsTitle,
    "attachments-head": REPORT.attachmentsHead,
    attachments: [
      ["inspection.json", REPORT.attachment],
      ["workings.txt", REPORT.workings],
    ],
  };
}
