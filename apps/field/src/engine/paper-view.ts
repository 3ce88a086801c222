import type { PaperKind } from "@good-grounds/report/papers";

export type { PaperKind };

/** Forms a paper for one reader can have: `txt` in bare words, for a message. Tables are of the list of works alone. */
export type PaperForm = "pdf" | "html" | "txt" | "csv" | "xlsx";
