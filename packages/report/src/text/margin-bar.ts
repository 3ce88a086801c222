import { type Compared, isKnown } from "@good-grounds/core";
import { sides } from "../words/comparison.ts";

/** The scale of a bar ends at this multiple of the limit. */
const SCALE_END = 1.6;

/**
 * A comparison as one line of plain characters: value and limit, each with its band, on one scale from nothing. Values
 * beyond the scale stand at its end as `>`. Empty where there is nothing to draw.
 */
export function marginBar(compared: Compared, width: number): string {
  const [left, limit] = sides(compared);
  if (left === undefined || limit === undefined || !isKnown(left) || !isKnown(limit)) return "";
  const mark = limit.value;
  if (!(mark > 0) || !Number.isFinite(mark)) return "";
  const end = mark * SCALE_END;
  const column = (value: number) => Math.min(width - 1, Math.max(0, Math.floor((value / end) * width)));
  const cells = new Array<string>(width).fill("·");
  if (limit.low !== limit.high) {
    for (let i = column(limit.low); i <= column(limit.high); i++) cells[i] = "=";
    if (limit.high > end) cells[width - 1] = ">";
  }
  if (left.low !== left.high) {
    for (let i = column(left.low); i <= column(left.high); i++) cells[i] = "-";
    cells[column(left.low)] = "(";
    cells[column(left.high)] = left.high > end ? ">" : ")";
  }
  cells[column(mark)] = "|";
  const at = column(left.value);
  // A value in the limit's own cell is set beside it, on the side it really lies.
  const beside = at === column(mark) && left.value !== mark ? (left.value < mark ? at - 1 : at + 1) : at;
  cells[Math.min(width - 1, Math.max(0, beside))] = left.value > end ? ">" : "o";
  return cells.join("");
}
