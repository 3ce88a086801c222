import type { InspectionFile } from "@good-grounds/inspection";
import { REPORT } from "../../locales/report-en.ts";
import { type Cell, cell, gap, joined } from "../cell.ts";
import { nameOf } from "./frame.ts";

/** A reading as the file has it. */
interface Written {
  readonly shown: string;
  readonly at?: string;
  readonly by?: string;
  readonly with?: string;
}

/** Who took the readings in a part of the file, with which instruments and when; what of it is not recorded is counted. */
export function takenBy(part: unknown, file: InspectionFile): Cell {
  const readings = readingsIn(part);
  if (readings.length === 0) return cell("");
  const each = (member: "by" | "with" | "at") => readings.flatMap((one) => one[member] ?? []);
  const people = [...new Set(each("by"))].map((id) => nameOf(file, id));
  const instruments = [...new Set(each("with"))].map((id) => instrumentName(file, id));
  const times = each("at").sort((a, b) => Date.parse(a) - Date.parse(b));
  const [first, last] = [times[0], times.at(-1)];
  const lacking = (["by", "with", "at"] as const)
    .map((member) => [REPORT.takenLacks[member], readings.length - each(member).length] as const)
    .filter(([, count]) => count > 0);
  if (lacking.every(([, count]) => count === readings.length) && lacking.length === 3) return gap(REPORT.takenUnsaid);
  const said = cell(REPORT.taken(people, instruments, first, last));
  return lacking.length === 0 ? said : joined([said, gap(REPORT.takenMissing(readings.length, lacking))], " ");
}

/** Every reading within a part of the file. */
export function readingsIn(part: unknown): readonly Written[] {
  if (typeof part !== "object" || part === null) return [];
  if ("shown" in part) return [part as Written];
  return Object.values(part).flatMap(readingsIn);
}

function instrumentName(file: InspectionFile, id: string): string {
  const found = file.instruments.find((one) => one.id === id);
  return found === undefined ? id : `${found.kind} ${found.serial}`;
}
