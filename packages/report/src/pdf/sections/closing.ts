import { drawnSignature } from "../../drawings/signature.ts";
import type { ReportInput } from "../../input.ts";
import { CAUTIONS } from "../../locales/en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { cell, cellOr, gap } from "../cell.ts";
import type { Drawings } from "../drawings.ts";
import { nameOf } from "./frame.ts";

/** Guidance for whoever receives the report, and the cautions that belong to it. */
export function recipients({ edition, installation }: ReportInput) {
  return {
    title: REPORT.recipientsTitle,
    paragraphs: REPORT.recipients(edition.label),
    "cautions-title": REPORT.cautionsTitle,
    cautions: [
      CAUTIONS.competent,
      CAUTIONS.danger(installation.file.brief.nation),
      CAUTIONS.isolation,
      CAUTIONS.dates,
      REPORT.printing,
    ],
  };
}

/** Who signed, as what and when, with the signature where one was drawn. */
export function signatures({ installation }: ReportInput, drawings: Drawings) {
  const { file } = installation;
  return {
    title: REPORT.signaturesTitle,
    words: file.signatures.length === 0 ? REPORT.unsigned : REPORT.signatures,
    head: REPORT.signaturesHead,
    note: file.signatures.some(({ content }) => content !== undefined) ? REPORT.contentNote : "",
    rows: file.signatures.map(({ person, capacity, at, content, drawn }) => {
      const found = file.people.find(({ id }) => id === person);
      const firm = [found?.firm, ...(found?.address ?? [])].filter(Boolean).join(", ");
      const words = REPORT.drawnSignature(nameOf(file, person));
      const cells = [
        cell(REPORT.capacity[capacity]),
        cell([nameOf(file, person), found?.position].filter(Boolean).join(", ")),
        firm === "" && found?.registration === undefined
          ? gap(REPORT.silence.absent)
          : cellOr([firm, found?.registration].filter(Boolean).join("; ")),
        cell(
          [REPORT.moment(at), content === undefined ? "" : REPORT.signedContent(content.slice(0, 16))]
            .filter(Boolean)
            .join("; "),
        ),
      ];
      return { cells, drawn: drawn === undefined ? "" : drawings.add(drawnSignature(drawn, words)), words };
    }),
    "attachments-title": REPORT.attachmentsTitle,
    "attachments-head": REPORT.attachmentsHead,
    attachments: [
      ["inspection.json", REPORT.attachment],
      ["workings.txt", REPORT.workings],
    ],
  };
}
