/** So many of the things that are wrong with a file are shown. */
const MOST = 6;

/** A job and the screen on which it starts. */
export interface Made {
  readonly job: string;
  readonly at: readonly string[];
}

/** A job of which nothing is known yet. */
export async function fromNothing(): Promise<Made> {
  const { startJob } = await import("./start-job.ts");
  return { job: await startJob(), at: ["brief"] };
}

/** A job from an inspection file, or what is wrong with the file. */
export async function fromFile(file: File): Promise<Made | readonly string[]> {
  const { startFromFile } = await import("./start-job.ts");
  const started = await startFromFile(await file.text());
  if ("job" in started) return { job: started.job, at: ["brief"] };
  return started.issues.slice(0, MOST);
}
