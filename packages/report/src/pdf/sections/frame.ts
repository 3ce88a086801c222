import type { InspectionFile } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { shortened } from "./shortened.ts";

/** What every page and the document's own description carry. */
export function frame({ installation, edition }: ReportInput) {
  const { file } = installation;
  const address = file.brief.premises.address.join(", ");
  const on = reportDay(file);
  return {
    title: REPORT.documentTitle(address),
    description: REPORT.documentDescription(file.id, edition.label),
    authors: [...new Set(file.signatures.map(({ person }) => nameOf(file, person)))],
    date: on.split("-").map(Number),
    header: REPORT.header(shortened(address, 80)),
    footer: REPORT.footer(file.id, on),
    page: REPORT.page("#", "##").split(/##?/),
    invented: file.invented === true ? REPORT.inventedShort : "",
  };
}

/** The day the report bears: that of the last signature, or of the inspection while nobody has signed. */
function reportDay(file: InspectionFile): string {
  const signed = file.signatures.map(({ at }) => at.slice(0, 10)).sort();
  return signed.at(-1) ?? file.inspectedOn;
}

/** A person's name, or the identifier where the file has no such person. */
export function nameOf(file: InspectionFile, id: string): string {
  return file.people.find((person) => person.id === id)?.name ?? id;
}
