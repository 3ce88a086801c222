import { parseArgs } from "node:util";
import { inspectionJsonSchema } from "@good-grounds/inspection";
import { EXIT, type ExitCode, type Host, Stop } from "./host.ts";
import { USAGE } from "./words.ts";

const VERSION = "0.1.0";

const OPTIONS = {
  all: { type: "boolean" },
  earlier: { type: "string", multiple: true },
  edition: { type: "string" },
  by: { type: "string" },
  grounds: { type: "boolean" },
  "grounds-of": { type: "string" },
  json: { type: "boolean" },
  list: { type: "boolean" },
  out: { type: "string" },
  check: { type: "boolean" },
  probability: { type: "boolean" },
  topics: { type: "string" },
  help: { type: "boolean", short: "h" },
  version: { type: "boolean" },
} as const;

/** The options each command has; another one is refused, so that nobody believes it did something. */
const OPTIONS_OF: Readonly<Record<string, readonly (keyof typeof OPTIONS)[]>> = {
  weigh: ["all", "earlier", "grounds", "grounds-of", "json", "probability", "topics"],
  report: ["earlier", "out", "topics"],
  compute: ["list", "json"],
  "compare-choices": ["by", "json", "topics"],
  reason: ["edition", "list", "json", "topics"],
  topics: ["all", "check", "json", "topics"],
  "own-figures": ["all", "earlier", "json"],
  ring: ["json"],
  schema: [],
};

/** Commands whose `--help` says what they take. */
const OWN_HELP: ReadonlySet<string> = new Set(["compute", "reason", "ring"]);

/** Runs the command line. Never throws: everything ends in an exit code and, where something is wrong, a message. */
export async function run(args: readonly string[], host: Host): Promise<ExitCode> {
  try {
    return await dispatch(args, host);
  } catch (error) {
    if (error instanceof Stop) {
      host.stderr.write(`${error.message}\n`);
      return error.code;
    }
    host.stderr.write(`goodgrounds: something is wrong with this program, not with your file: ${String(error)}\n`);
    if (process.env.GOODGROUNDS_DEBUG !== undefined && error instanceof Error)
      host.stderr.write(`${error.stack ?? ""}\n`);
    return EXIT.fault;
  }
}

async function dispatch(args: readonly string[], host: Host): Promise<ExitCode> {
  const { values, positionals } = parsed(args);
  const [command, ...rest] = positionals;
  if (values.version === true) {
    host.stdout.write(`${VERSION}\n`);
    return EXIT.done;
  }
  if (command === undefined || (values.help === true && !OWN_HELP.has(command))) {
    (values.help === true ? host.stdout : host.stderr).write(USAGE);
    return values.help === true ? EXIT.done : EXIT.input;
  }
  const own = OPTIONS_OF[command];
  const strange = Object.keys(values).find((name) => name !== "help" && !own?.includes(name as keyof typeof OPTIONS));
  if (own !== undefined && strange !== undefined)
    throw new Stop(EXIT.input, `${command}: has no option --${strange}. \`goodgrounds --help\` shows what it has.`);
  const json = values.json === true;
  switch (command) {
    case "weigh": {
      const { weighCommand } = await import("./commands/weigh.ts");
      const grounds = values["grounds-of"] ?? values.grounds ?? false;
      return weighCommand(
        rest,
        {
          grounds,
          all: values.all === true,
          json,
          probability: values.probability === true,
          earlier: values.earlier ?? [],
          topics: values.topics,
        },
        host,
      );
    }
    case "report": {
      const { reportCommand } = await import("./commands/report.ts");
      const { out, topics, earlier = [] } = values;
      return reportCommand(rest, { out, earlier, topics, given: [...rest, ...wordsGiven(values)] }, host);
    }
    case "compute": {
      const { computeCommand } = await import("./commands/compute.ts");
      if (values.help === true && rest.length === 0) {
        host.stdout.write(USAGE);
        return EXIT.done;
      }
      return computeCommand(rest, { list: values.list === true, help: values.help === true, json }, host);
    }
    case "compare-choices": {
      const { compareChoicesCommand } = await import("./commands/compare-choices.ts");
      return compareChoicesCommand(rest, { by: values.by, json, topics: values.topics }, host);
    }
    case "reason": {
      const { reasonCommand } = await import("./commands/reason.ts");
      const { edition, list, help, topics } = values;
      return reasonCommand(rest, { list: list === true, help: help === true, json, edition, topics }, host);
    }
    case "own-figures": {
      const { ownFiguresCommand } = await import("./commands/own-figures.ts");
      const [earlier, ...more] = values.earlier ?? [];
      if (more.length > 0) throw new Stop(EXIT.input, "own-figures: holds against one earlier file. Name it once.");
      return ownFiguresCommand(rest, { earlier, all: values.all === true, json }, host);
    }
    case "ring": {
      const { ringCommand } = await import("./commands/ring/ring.ts");
      return ringCommand(rest, { help: values.help === true, json }, host);
    }
    case "topics": {
      const { topicsCommand } = await import("./commands/topics/topics.ts");
      return topicsCommand(
        rest,
        { all: values.all === true, check: values.check === true, json, topics: values.topics },
        host,
      );
    }
    case "schema":
      if (rest.length > 0) throw new Stop(EXIT.input, "schema: takes no arguments.");
      host.stdout.write(`${JSON.stringify(inspectionJsonSchema(), null, 2)}\n`);
      return EXIT.done;
    default:
      throw new Stop(
        EXIT.input,
        `goodgrounds: no command is called ${JSON.stringify(command.slice(0, 40))}. The commands are weigh, report, reason, compute, compare-choices, own-figures, ring, topics, schema.`,
      );
  }
}

/** Every text given with an option, whatever it is for, but the output: what a later option reads is guarded as well. */
function wordsGiven({ out: _, ...values }: ReturnType<typeof parsed>["values"]): readonly string[] {
  return Object.values(values)
    .flat()
    .filter((value) => typeof value === "string");
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true, strict: true });
  } catch (error) {
    throw new Stop(EXIT.input, `goodgrounds: ${error instanceof Error ? error.message : String(error)}`);
  }
}
