import { item } from "./item.ts";

/** Notices and identification. */
export const NOTICES = [
  item("notices.diagram", "always", "Chart or diagram of the circuits at hand", "514.9.1"),
  item("notices.other-sources", "other-source", "Notice of more than one source of supply", "514.15.1"),
  item("notices.isolation", "always", "Notice where one switch does not isolate everything", "514.11.1"),
  item("notices.voltage", "always", "Notice of unexpected voltage", "514.10.1"),
  item("notices.inspection", "always", "Date of the next inspection at hand", "514.12.1"),
  item("notices.rcd-test", "always", "Notice to press the test button of RCDs, where there are any", "514.12.2"),
] as const;
