import type { InspectionFile } from "@good-grounds/inspection";
import type { ReportInput } from "../input.ts";
import { PAPERS } from "../locales/papers-en.ts";
import { issuedAt, standingSignatures } from "../words/signature.ts";

/** What every paper says of itself: which inspection, by whom, and whether somebody signed for it. */
export interface PaperHead {
  readonly address: string;
  readonly id: string;
  readonly inspectedOn: string;
  /** The day it bears: that of the last signature that stands, or of the inspection while there is none. */
  readonly day: string;
  readonly firm: readonly string[];
  /** Names of those whose signatures stand for the content. */
  readonly signed: readonly string[];
  /** That nobody signed, or that something that decides stands open; empty where the report can be issued. */
  readonly draft: string;
  readonly invented: string;
}

export function headOf({ installation: { file }, draft }: ReportInput): PaperHead {
  const signed = standingSignatures(file).filter(({ standing }) => standing === "signed");
  return {
    address: file.brief.premises.address.join(", "),
    id: file.id,
    inspectedOn: file.inspectedOn,
    day: issuedAt(file).slice(0, 10),
    firm: firmOf(file),
    signed: [...new Set(signed.map(({ name }) => name))],
    draft: signed.length === 0 ? PAPERS.unsigned : draft === true ? PAPERS.draft : "",
    invented: file.invented === true ? PAPERS.invented : "",
  };
}

/** Name and address of the firm: of whoever authorised the report, else of the first person who has one. */
function firmOf({ people, signatures }: InspectionFile): readonly string[] {
  const order = ["authorised-for-issue", "inspected-and-tested"].flatMap((capacity) =>
    signatures.filter((one) => one.capacity === capacity).map(({ person }) => person),
  );
  const candidates = [...order.flatMap((id) => people.filter((one) => one.id === id)), ...people];
  const firm = candidates.find((one) => one.firm !== undefined)?.firm;
  if (firm === undefined) return [];
  const address = candidates.find((one) => one.firm === firm && one.address !== undefined)?.address ?? [];
  return [firm, ...address];
}
