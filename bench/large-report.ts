/**
 * node bench/large-report.ts: the report of a large job in processor time and bytes, written to
 * bench/results/large-report.md. Seven boards, 120 circuits, 60 observations with a photograph each.
 */
import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { assemble } from "@good-grounds/assembly";
import { printInspection } from "@good-grounds/inspection";
import { writeReportPdf } from "@good-grounds/report/pdf";
import { reportHtml } from "@good-grounds/report/pdf/document";
import { BOARDS, CIRCUITS, largeJob, OBSERVATIONS } from "../outside/reports/large-job.ts";
import { processorTime } from "./measure.ts";

const { file, photographs } = largeJob();
const json = printInspection(file);

// Once, from cold: the layout engine keeps what it has laid out, so that a second time would say nothing.
const started = processorTime();
const input = { ...assemble(file, true), photographs };
const judged = processorTime();
const bytes = writeReportPdf(input, { json }).length;
const written = processorTime();
const letters = reportHtml(input).length;
const html = processorTime();

const seconds = (milliseconds: number) => (milliseconds / 1000).toFixed(1);
const lines = [
  "# The report of a large job",
  "",
  `${BOARDS} boards, ${CIRCUITS} circuits, ${OBSERVATIONS} observations with a photograph each. ${cpus()[0]?.model ?? "unknown processor"}, ${cpus().length} cores, Node ${process.version}; processor time of one run from cold.`,
  "",
  "| what | value | asked for |",
  "|---|---|---|",
  `| judged from the file | ${seconds(judged - started)} s | |`,
  `| written as PDF with evidence and workings attached | ${seconds(written - judged)} s | |`,
  `| both | ${seconds(written - started)} s | at most 5 s |`,
  `| the PDF | ${(bytes / 1e6).toFixed(1)} MB | at most 25 MB |`,
  `| written as one HTML file | ${seconds(html - written)} s | |`,
  `| the HTML file | ${(letters / 1e6).toFixed(1)} MB | |`,
  "",
];
writeFileSync(new URL("results/large-report.md", import.meta.url), lines.join("\n"));
process.stdout.write(lines.join("\n"));
