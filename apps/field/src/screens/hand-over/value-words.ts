import { ITEMS } from "@good-grounds/inspection/items";
import { clock } from "../../parts/clock.ts";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { EDITION_WORDS, NATION_WORDS, TENURE_WORDS, USES } from "../../words/brief.ts";
import { STEPS } from "../../words/cautions.ts";
import { HAND_OVER } from "../../words/finish.ts";
import { ANSWERS } from "../../words/inspected.ts";
import { CABLE, CPC, GROUPING, INSULATION, LOAD, SHAPE } from "../../words/installation.ts";
import { spaced } from "../../words/members.ts";
import { rcdName } from "../installation/rcd-name.ts";

const LONGEST = 160;

/** A value of the record in few words: a reading as it was shown, anything else member by member, nothing by its id. */
export function valueWords(record: JobRecord, path: string, value: Value): string {
  const words = told(record, path, value);
  return words.length > LONGEST ? `${words.slice(0, LONGEST)} …` : words;
}

/** Words for values that the file writes in a way of its own. */
const WORDS: Readonly<Record<string, string>> = {
  ...USES,
  ...TENURE_WORDS,
  ...NATION_WORDS,
  ...EDITION_WORDS,
  ...LOAD,
  ...CABLE,
  ...CPC,
  ...GROUPING,
  ...INSULATION,
  ...SHAPE,
  ...ANSWERS,
  ...STEPS,
};

function told(record: JobRecord, path: string, value: Value): string {
  if (value === null) return HAND_OVER.removed;
  if (value === true || value === false) return value ? HAND_OVER.yes : HAND_OVER.no;
  if (typeof value === "string") return text(record, path, value);
  if (typeof value !== "object") return String(value);
  if (Array.isArray(value)) {
    if (value.length === 0) return HAND_OVER.noneOfIt;
    return value
      .slice(0, 20)
      .map((one) => told(record, path, one as Value))
      .join(", ");
  }
  const { shown } = value as { readonly shown?: Value };
  if (typeof shown === "string") return shown;
  return Object.entries(value)
    .slice(0, 20)
    .map(([name, one]) => told(record, join(path, name), one as Value))
    .join(", ");
}

/** A moment, as it is written. */
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d/;
/** The hash of a photograph. */
const HASH = /^[0-9a-f]{64}$/;
/** Two words or more joined by hyphens, as the file writes its own. */
const JOINED = /^[a-z0-9]+(-[a-z0-9]+)+$/;

function text(record: JobRecord, path: string, value: string): string {
  if (Object.hasOwn(WORDS, value)) return WORDS[value] ?? "";
  if (MOMENT.test(value)) return clock(value);
  if (HASH.test(value)) return path === "topics/hash" ? value.slice(0, 12) : HAND_OVER.aPhotograph;
  const named = nameOfMember(record, path, value);
  if (named !== undefined) return named;
  const item = ITEMS.find(({ id }) => id === value);
  if (item !== undefined) return item.asks;
  return JOINED.test(value) ? spaced(value) : value.slice(0, LONGEST + 1);
}

/** What a member of the job is called, where a value is its id. */
function nameOfMember(record: JobRecord, path: string, id: string): string | undefined {
  const [, board = ""] = path.split("/");
  if (/\/rcd\/board$/.test(path)) return rcdName(record, `boards/${board}`, id);
  const places = [
    `people/${id}/name`,
    `instruments/${id}/kind`,
    `boards/${id}/name`,
    `boards/${board}/circuits/${id}/designation`,
    `observations/${id}/what`,
  ];
  const name = places.map((at) => record.value(at)).find((one) => typeof one === "string");
  return typeof name === "string" ? name : undefined;
}
