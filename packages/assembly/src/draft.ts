import { standsInTheWay } from "@good-grounds/judgement";
import { type ReportInput, standingSignatures } from "@good-grounds/report";

/**
 * What a report is made from, as a draft where it could not be issued as it stands: something that decides stands open, or
 * nobody signed this content. Every page of a draft says so.
 */
export function draftWhereOpen(input: ReportInput): ReportInput {
  const isSigned = standingSignatures(input.installation.file).some(({ standing }) => standing === "signed");
  return isSigned && standsInTheWay(input.outcome).length === 0 ? input : { ...input, draft: true };
}
