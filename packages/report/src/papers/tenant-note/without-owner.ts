import type { InspectionFile } from "@good-grounds/inspection";
import { TENANT } from "../../locales/tenant-note-en.ts";

/** Parts of a name shorter than this are too common to be told apart from other words. */
const SHORTEST = 4;

/**
 * Takes what is private of whoever ordered the inspection out of words that others wrote: name, parts of the name and
 * address become "the owner". The address of the premises is no secret to those who live there.
 */
export function withoutOwner(text: string, { brief: { client, premises } }: InspectionFile): string {
  const known = new Set(premises.address);
  const parts = client.name.split(/[\s,;()]+/u).filter((part) => [...part].length >= SHORTEST);
  const secrets = [client.name, ...(client.address ?? []), ...parts].filter((one) => !known.has(one));
  return secrets
    .sort((a, b) => b.length - a.length)
    .reduce((words, secret) => words.replaceAll(asWord(secret), TENANT.owner), text);
}

/** A text where it stands by itself and not within another word. */
function asWord(text: string): RegExp {
  const plain = text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
  return new RegExp(String.raw`(?<![\p{L}\p{N}])${plain}(?![\p{L}\p{N}])`, "gu");
}
