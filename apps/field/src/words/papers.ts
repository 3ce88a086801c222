import type { PaperForm, PaperKind } from "../engine/paper-view.ts";

const FORM: Readonly<Record<PaperForm, string>> = {
  pdf: "PDF",
  html: "Page",
  txt: "Text",
  csv: "CSV",
  xlsx: "Workbook",
};

const KIND: Readonly<Record<PaperKind, string>> = {
  letter: "Letter to the owner",
  works: "Works list",
  notice: "Notice of danger",
  chart: "Circuit charts",
  tenant: "Note for who lives there",
};

/** Words of the papers for one reader each. */
export const PAPERS = {
  title: "Papers for each reader",
  help: "All from this inspection, and each for one reader. A PDF fetches the layout engine the first time, about 12 MB.",
  notYet: "Something still stands in the way: the papers are made once the report can be.",
  kind: KIND,
  about: {
    letter: "The outcome, what to do and the dates, in plain words. Your own words are taken over as you wrote them.",
    works: "For whoever puts it right: by board, with room to sign. CSV and workbook for other programs.",
    notice: "What, where, what was done, who was told, what not to do.",
    chart: "One sheet for the door of each board.",
    tenant: "One page: what to stay away from, the test button, whom to call. Nothing of the owner.",
  } satisfies Record<PaperKind, string>,
  form: FORM,
  button: (kind: PaperKind, form: PaperForm) => `${KIND[kind]}, ${FORM[form]}`,
  making: (name: string) => `Writing: ${name} …`,
  failed: (reason: string) => `It could not be written: ${reason}`,
};
