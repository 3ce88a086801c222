import { item } from "./item.ts";

/** Notices and identification. */
export const NOTICES = [
  item("notices.diagram", "Chart or diagram of the circuits at hand", "514.9.1"),
  item("notices.other-sources", "Notice of more than one source of supply", "514.15.1"),
  item("notices.isolation", "Notice where one switch does not isolate everything", "514.11.1"),
  item("notices.voltage", "Notice of unexpected voltage", "514.10.1"),
  item("notices.inspection", "Date of the next inspection at hand", "514.12.1"),
] as const;
