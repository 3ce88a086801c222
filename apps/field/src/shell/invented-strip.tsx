import { SHELL } from "../words/shell.ts";

/** Says on every screen that a job is the demonstration. */
export function InventedStrip() {
  return <p class="invented">{SHELL.invented}</p>;
}
