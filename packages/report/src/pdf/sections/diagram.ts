import type { Path } from "@good-grounds/core";
import { lineDiagram } from "../../drawings/line-diagram.ts";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import type { Drawings } from "../drawings.ts";
import { worstVerdict } from "./reading-finding.ts";

/** The installation as a line diagram. */
export function diagram({ installation, weighing }: ReportInput, drawings: Drawings) {
  const byPath = new Map(
    installation.circuits.map((circuit, i) => [circuit.path, worstVerdict(weighing.circuits[i] ?? [])]),
  );
  const pages = lineDiagram(installation, { verdictOf: (path: Path) => byPath.get(path) ?? "not-known" });
  return {
    title: REPORT.diagramTitle,
    note: REPORT.diagramNote,
    drawings: pages.map((svg, i) => ({
      file: drawings.add(svg),
      words: REPORT.diagramWords(installation.boards.length, installation.circuits.length, i + 1),
    })),
  };
}
