import type { ReportInput } from "../input.ts";
import { type Drawing, Drawings } from "./drawings.ts";
import { boards } from "./sections/boards.ts";
import { recipients, signatures } from "./sections/closing.ts";
import { curves } from "./sections/curves.ts";
import { diagram } from "./sections/diagram.ts";
import { duties } from "./sections/duties.ts";
import { instruments, photographs, sources } from "./sections/evidence.ts";
import { extent } from "./sections/extent.ts";
import { calculations, findings } from "./sections/findings.ts";
import { firstPage } from "./sections/first-page.ts";
import { frame } from "./sections/frame.ts";
import { items } from "./sections/items.ts";
import { ledger } from "./sections/ledger.ts";
import { misfits } from "./sections/misfits.ts";
import { observations } from "./sections/observations.ts";
import { origin } from "./sections/origin.ts";
import { safety } from "./sections/safety.ts";
import { thenAndNow } from "./sections/then-and-now.ts";
import { things } from "./sections/things.ts";

/** The sections of the report as plain data with every sentence made, and the drawings they name. */
export interface ReportModel {
  readonly data: ReturnType<typeof reportSections>;
  readonly drawings: readonly Drawing[];
}

/** Makes the data of the report. */
export function reportModel(input: ReportInput): ReportModel {
  const drawings = new Drawings();
  return { data: reportSections(input, drawings), drawings: drawings.all() };
}

/** Every section by its name. */
export function reportSections(input: ReportInput, drawings: Drawings) {
  return {
    ...frame(input),
    first: firstPage(input, drawings),
    open: ledger(input),
    observations: observations(input, drawings),
    origin: origin(input),
    findings: findings(input, drawings),
    misfits: misfits(input, drawings),
    boards: boards(input, drawings),
    things: things(input),
    diagram: diagram(input, drawings),
    curves: curves(input, drawings),
    past: thenAndNow(input, drawings),
    calculations: calculations(input),
    items: items(input),
    extent: extent(input),
    safety: safety(input),
    instruments: instruments(input),
    photographs: photographs(input),
    sources: sources(input),
    duties: duties(input),
    recipients: recipients(input),
    signatures: signatures(input, drawings),
  };
}
