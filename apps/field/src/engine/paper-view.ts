import type { PaperKind } from "@good-grounds/report/papers";

export type { PaperKind };

/** Forms a paper for one reader can have; tables are of the list of works alone. */
export type PaperForm = "pdf" | "html" | "csv" | "xlsx";
