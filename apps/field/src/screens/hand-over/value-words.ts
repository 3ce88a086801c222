import type { Value } from "../../record/entry.ts";
import { HAND_OVER } from "../../words/finish.ts";

/** A value in few words: a reading as it was shown, anything else member by member. */
export function valueWords(value: Value): string {
  const words = told(value);
  return words.length > LONGEST ? `${words.slice(0, LONGEST)} …` : words;
}

const LONGEST = 160;

function told(value: Value): string {
  if (value === null) return HAND_OVER.removed;
  if (typeof value === "string") return value.slice(0, LONGEST + 1);
  if (typeof value !== "object") return String(value);
  const { shown } = value as { readonly shown?: Value };
  if (typeof shown === "string") return shown;
  return (Array.isArray(value) ? value : Object.values(value))
    .slice(0, 20)
    .map((one) => told(one as Value))
    .join(", ");
}
