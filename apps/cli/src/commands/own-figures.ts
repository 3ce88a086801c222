import { type InspectionFile, resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures, OWN_FIGURES_LOOKS } from "@good-grounds/readings";
import { renderOwnFigures } from "@good-grounds/report";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";
import { readInspection } from "../inspection.ts";
import { problemsJson } from "../json.ts";
import { ownFiguresJson } from "../own-figures-json.ts";
import { readText } from "../read.ts";
import { issueLines } from "../words.ts";

export interface OwnFiguresOptions {
  /** Path of an earlier file of the same installation. */
  readonly earlier: string | undefined;
  readonly all: boolean;
  readonly json: boolean;
}

/** `goodgrounds own-figures`: what is worth confirming in one's own readings. Whatever it finds, it blocks nothing. */
export async function ownFiguresCommand(
  paths: readonly string[],
  { earlier, all, json }: OwnFiguresOptions,
  host: Host,
): Promise<ExitCode> {
  const [path, ...more] = paths;
  if (path === undefined || more.length > 0) throw new Stop(EXIT.input, "own-figures: name one inspection file.");
  if (earlier === "") throw new Stop(EXIT.input, "own-figures: name the earlier file after --earlier.");
  const file = await read(path, json, host);
  const before = earlier === undefined ? undefined : await read(earlier, json, host);
  if (file === undefined || (earlier !== undefined && before === undefined)) return EXIT.input;
  if (before !== undefined && before.id === file.id)
    throw new Stop(
      EXIT.input,
      `own-figures: ${earlier} has the id ${file.id} as well: it is the same inspection, not an earlier one.`,
    );
  const installation = resolveInstallation(file);
  const figures = lookAtOwnFigures(installation, before);
  host.stdout.write(
    json
      ? `${JSON.stringify(ownFiguresJson(figures, file, before), null, 2)}\n`
      : renderOwnFigures(figures, installation, {
          width: Math.min(host.columns ?? 80, 100),
          all,
          earlier: before?.id,
          checks: OWN_FIGURES_LOOKS.length,
        }),
  );
  return EXIT.done;
}

/** The file of a path; undefined, with its problems told, where it is none. */
async function read(path: string, json: boolean, host: Host): Promise<InspectionFile | undefined> {
  const parsed = readInspection(await readText(path));
  if (parsed.ok) {
    for (const step of parsed.migrated) host.stderr.write(`${path}: written by an older version; ${step}\n`);
    return parsed.file;
  }
  if (json) host.stdout.write(`${JSON.stringify(problemsJson(path, parsed.issues), null, 2)}\n`);
  host.stderr.write(issueLines(path, parsed.issues));
  return undefined;
}
