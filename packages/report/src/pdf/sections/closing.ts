import { drawnSignature } from "../../drawings/signature.ts";
import type { ReportInput } from "../../input.ts";
import { CAUTIONS } from "../../locales/en.ts";
import { SIGNATURE } from "../../locales/outcome-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { standingSignatures } from "../../words/signature.ts";
import { cell, cellOr, gap } from "../cell.ts";
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
export function signatures({ installation }: ReportInput, drawings: Drawings) {
  const { file } = installation;
  const standing = standingSignatures(file);
  const stands = standing.filter((one) => one.standing === "signed");
  return {
    title: REPORT.signaturesTitle,
    words: file.signatures.length === 0 ? REPORT.unsigned : stands.length === 0 ? REPORT.notSigned : REPORT.signatures,
    head: REPORT.signaturesHead,
    note: stands.length > 0 ? REPORT.contentNote : "",
    rows: standing.map(({ signature: { person, capacity, at, content, drawn }, standing: how, name }) => {
      const found = file.people.find(({ id }) => id === person);
      const firm = [found?.firm, ...(found?.address ?? [])].filter(Boolean).join(", ");
      const words = REPORT.drawnSignature(name);
      const cells = [
        cell(REPORT.capacity[capacity]),
        cell([name, found?.position].filter(Boolean).join(", ")),
        firm === "" && found?.registration === undefined
          ? gap(REPORT.silence.absent)
          : cellOr([firm, found?.registration].filter(Boolean).join("; ")),
        how === "signed"
          ? cell([REPORT.moment(at), REPORT.signedContent((content ?? "").slice(0, 16))].join("; "))
          : gap(SIGNATURE[how](name, REPORT.moment(at))),
      ];
      return {
        cells,
        drawn: drawn === undefined || how !== "signed" ? "" : drawings.add(drawnSignature(drawn, words)),
        words,
      };
    }),
    "attachments-title": REPORT.attachmentsTitle,
    "attachments-head": REPORT.attachmentsHead,
    attachments: [
      ["inspection.json", REPORT.attachment],
      ["workings.txt", REPORT.workings],
    ] as const,
  };
}
