import { COLUMNS, type Column } from "../../instrument-file/columns.ts";
import type { Target } from "../../instrument-file/plan.ts";
import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { textAt } from "../observations/read.ts";

/** The circuits a line may be about, each with the names it may have there. */
export function targetsOf(record: JobRecord): readonly Target[] {
  return membersOf(record, "boards").flatMap((board) =>
    membersOf(record, `boards/${board}/circuits`).map((circuit) => {
      const path = `boards/${board}/circuits/${circuit}`;
      const [designation, description] = [textAt(record, `${path}/designation`), textAt(record, `${path}/description`)];
      const name = textAt(record, `boards/${board}/name`);
      return {
        path,
        names: [
          designation,
          description,
          `${designation} ${description}`,
          `${name} ${designation}`,
          `${board} ${designation}`,
        ].filter((one) => one.trim() !== ""),
      };
    }),
  );
}

/** A reading's place as people call it. */
export function placeOf(record: JobRecord, path: string): string {
  const circuit = path.split("/").slice(0, 4).join("/");
  return `${textAt(record, `${circuit}/designation`)} ${textAt(record, `${circuit}/description`)}, ${COLUMNS[path.split("/").at(-1) as Column]?.words ?? ""}`.trim();
}
