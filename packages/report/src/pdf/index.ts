import type { ReportInput } from "../input.ts";

export function writeReportPdf(_input: ReportInput, _source: { readonly json: string }): Uint8Array {
  throw new Error("not there yet");
}
