import { CLASSIFICATIONS } from "@good-grounds/core";
import type { Data } from "../engine/protocol.ts";
import type { Value } from "../record/entry.ts";
import { LETTER } from "../words/finish.ts";

type Row = { readonly [name: string]: Value };

/**
 * A plain letter of what was found, most urgent first. `sentences` holds the plain sentence of each observation by id, for
 * those of which one is known to be true; of the others the inspector's own words are told.
 */
export function letterOf(data: Data, sentences: ReadonlyMap<string, string>): string {
  const brief = (data.brief ?? {}) as Row;
  const client = (brief.client ?? {}) as Row;
  const premises = (brief.premises ?? {}) as Row;
  const conclusion = (data.conclusion ?? {}) as Row;
  const observations = (data.observations ?? []) as readonly Row[];
  const lines = [
    LETTER.greeting(text(client.name)),
    "",
    LETTER.opening(list(premises.address).join(", "), text(data.inspectedOn)),
    conclusion.outcome === "satisfactory" || conclusion.outcome === "unsatisfactory"
      ? LETTER.outcome[conclusion.outcome]
      : LETTER.noOutcome,
  ];
  for (const classification of CLASSIFICATIONS) {
    if (classification === "none") continue;
    const those = observations.filter(({ choice }) => (choice as Row | undefined)?.classification === classification);
    if (those.length === 0) continue;
    lines.push("", `${LETTER.heads[classification]}:`);
    for (const one of those) {
      const done = text((one.madeSafe as Row | undefined)?.done);
      // What was there before is not told as if it were there now.
      const plain = done === "" ? (sentences.get(text(one.id)) ?? "") : "";
      lines.push(`- ${text(one.place)}: ${plain === "" ? text(one.what) : plain}`);
      if (done !== "") lines.push(`  ${LETTER.done(done)}`);
      if (text(one.remedy) !== "") lines.push(`  ${LETTER.todo(text(one.remedy))}`);
    }
  }
  const limits = (data.limitations ?? []) as readonly Row[];
  if (limits.length > 0) lines.push("", `${LETTER.unseen}:`, ...limits.map(({ what }) => `- ${text(what)}`));
  const next = (conclusion.nextInspection ?? {}) as Row;
  if (text(next.by) !== "") lines.push("", LETTER.next(text(next.by)));
  const tenure = text(brief.tenure);
  if (tenure === "private-rented" || tenure === "social-rented") lines.push("", LETTER.law);
  lines.push("", LETTER.closing);
  return lines.join("\n");
}

function text(value: Value | undefined): string {
  return typeof value === "string" ? value : "";
}

function list(value: Value | undefined): readonly string[] {
  return Array.isArray(value) ? value.map(String) : [];
}
