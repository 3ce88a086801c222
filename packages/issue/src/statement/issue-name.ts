/** A name for the files of one issue of a report: letters, digits, dot, line and dash alone, on every disk. */
export function issueName(report: string, number: number): string {
  return `${fileNameOf(report)}-issue-${number}`;
}

/** The number of a report as a name for a file. */
export function fileNameOf(report: string): string {
  return report.replaceAll(/[^\p{L}\p{N}._-]/gu, "_");
}
