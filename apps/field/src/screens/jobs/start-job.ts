import { FORMAT, type InspectionFile, parseInspection, VERSION } from "@good-grounds/inspection";
import { filePlace, issueWords } from "../../engine/issue-words.ts";
import { documentOf, placesOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Session } from "../../record/session.ts";
import { jobs, keepJob } from "../../record/store.ts";
import { newName, today } from "../../shell/job.ts";
import { labelOf } from "../../shell/job-label.ts";
import { carriedOver } from "./carried-over.ts";

/** The edition in force. */
const EDITION = "2018+A4";

/** Starts a job with nothing in it but the day, and the people and instruments of the job before. */
export async function startJob(): Promise<string> {
  return make({}, await peopleAndInstruments());
}

/** What became of a file: a job, or what is wrong with it. */
export type Started = { readonly job: string } | { readonly issues: readonly string[] };

/** Starts a job from last time's inspection file, which is kept aside whole. */
export async function startFromFile(text: string): Promise<Started> {
  const parsed = parseInspection(text);
  if (!parsed.ok)
    return {
      issues: parsed.issues.map((issue) => [filePlace(issue.path), issueWords(issue)].filter(Boolean).join(": ")),
    };
  const earlier = plain(parsed.file);
  const carried = plain(carriedOver(parsed.file) as Partial<InspectionFile>);
  const job = await make(carried, await peopleAndInstruments(), [`~earlier/${parsed.file.id}`, earlier]);
  return { job };
}

async function make(
  carried: { readonly [name: string]: Value },
  own: { readonly [name: string]: Value },
  ...more: readonly (readonly [path: string, value: Value])[]
): Promise<string> {
  const job = crypto.randomUUID();
  const day = today();
  const session = await Session.open(job);
  try {
    await session.write(
      ["format", FORMAT],
      ["version", VERSION],
      ["id", `GG-${day.replaceAll("-", "")}-${job.slice(0, 4)}`],
      ["edition", EDITION],
      ["inspectedOn", day],
      [`visits/${newName("v")}/date`, day],
      // What only this visit brings begins with none of it; whether there is none of anything else, a person says.
      ["observations", []],
      ["photographs", []],
      ["signatures", []],
      ...placesOf({ ...own, ...carried }),
      ...more,
    );
    await keepJob(labelOf(job, session.record, new Date().toISOString()));
  } finally {
    session.close();
  }
  return job;
}

/** People and instruments of the job that was changed last: mostly the same as today's, and easily taken out. */
async function peopleAndInstruments(): Promise<{ readonly [name: string]: Value }> {
  const last = (await jobs()).find(({ invented }) => !invented);
  if (last === undefined) return {};
  const session = await Session.open(last.id);
  session.close();
  const { people = [], instruments = [] } = documentOf(session.record) as {
    readonly people?: Value;
    readonly instruments?: readonly { readonly [name: string]: Value }[];
  };
  // When leads were nulled belongs to the day.
  return { people, instruments: instruments.map(({ leadsNulled: _, ...instrument }) => instrument) };
}

/** The data as plain JSON values, without members that are there and undefined. */
function plain(data: Partial<InspectionFile>): { readonly [name: string]: Value } {
  return JSON.parse(JSON.stringify(data));
}
