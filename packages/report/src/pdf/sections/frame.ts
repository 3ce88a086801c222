import type { InspectionFile } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { standingSignatures } from "../../words/signature.ts";
import { shortened } from "./shortened.ts";

/** What every page and the document's own description carry. */
export function frame({ installation, edition, draft }: ReportInput) {
  const { file } = installation;
  const address = file.brief.premises.address.join(", ");
  const on = reportDay(file);
  return {
    title: REPORT.documentTitle(address),
    description: REPORT.documentDescription(file.id, edition.label),
    authors: [...new Set(signed(file).map(({ name }) => name))],
    date: on.split("-").map(Number),
    header: REPORT.header(shortened(address, 80)),
    footer: REPORT.footer(file.id, on),
    page: REPORT.page("#", "##").split(/##?/),
    draft: draft === true ? REPORT.draft : "",
    invented: file.invented === true ? REPORT.inventedShort : "",
  };
}

/** Signatures that stand for what is printed. */
function signed(file: InspectionFile) {
  return standingSignatures(file).filter(({ standing }) => standing === "signed");
}

/** The day the report bears: that of the last signature, or of the inspection while nobody has signed. */
function reportDay(file: InspectionFile): string {
  const days = signed(file)
    .map(({ signature: { at } }) => at.slice(0, 10))
    .sort();
  return days.at(-1) ?? file.inspectedOn;
}

/** A person's name, or the identifier where the file has no such person. */
export function nameOf(file: InspectionFile, id: string): string {
  return file.people.find((person) => person.id === id)?.name ?? id;
}
