import { foldCase } from "./fact-key.ts";

/**
 * A person's name as persons are matched across files, where their ids mean nothing outside one file: letter case and
 * spacing evened. Two people of one name are taken for one; one person under two names for two.
 */
export function personKey(name: string): string {
  return foldCase(name.normalize("NFC").replaceAll(/\s+/gu, " ").trim());
}
