import { parseArgs } from "node:util";
import { RELEASE } from "@good-grounds/core";
import { EXIT, type ExitCode, type Host, Stop } from "./host.ts";
import { USAGE } from "./usage.ts";

const OPTIONS = {
  all: { type: "boolean" },
  earlier: { type: "string", multiple: true },
  by: { type: "string" },
  grounds: { type: "boolean" },
  "grounds-of": { type: "string" },
  json: { type: "boolean" },
  list: { type: "boolean" },
  out: { type: "string" },
  check: { type: "boolean" },
  as: { type: "string" },
  certificate: { type: "string" },
  device: { type: "string" },
  draft: { type: "boolean" },
  key: { type: "string" },
  person: { type: "string" },
  reason: { type: "string", multiple: true },
  register: { type: "string" },
  replaces: { type: "string" },
  root: { type: "string" },
  since: { type: "string" },
  "time-authority": { type: "string" },
  probability: { type: "boolean" },
  photographs: { type: "string" },
  topics: { type: "string" },
  help: { type: "boolean", short: "h" },
  version: { type: "boolean" },
} as const;

type Values = ReturnType<typeof parsed>["values"];

interface Command {
  /** The options it has; another one is refused, so that nobody believes it did something. */
  readonly options: readonly (keyof typeof OPTIONS)[];
  /** Loads what it needs, so that no command waits for what another needs, and does it. */
  readonly start: (rest: readonly string[], values: Values, host: Host) => Promise<ExitCode>;
}

const COMMANDS: Readonly<Record<string, Command>> = {
  weigh: {
    options: ["all", "earlier", "grounds", "grounds-of", "json", "probability", "topics"],
    async start(rest, values, host) {
      const { weighCommand } = await import("./commands/weigh.ts");
      const grounds = values["grounds-of"] ?? values.grounds ?? false;
      const { all = false, json = false, probability = false, earlier = [], topics } = values;
      return weighCommand(rest, { grounds, all, json, probability, earlier, topics }, host);
    },
  },
  report: {
    options: ["earlier", "out", "photographs", "topics"],
    async start(rest, values, host) {
      const { reportCommand } = await import("./commands/report.ts");
      const { out, photographs, topics, earlier = [] } = values;
      return reportCommand(rest, { out, earlier, photographs, topics, given: [...rest, ...wordsGiven(values)] }, host);
    },
  },
  document: {
    options: ["out", "photographs", "topics"],
    async start(rest, values, host) {
      const { documentCommand } = await import("./commands/document.ts");
      const { out, photographs, topics } = values;
      return documentCommand(rest, { out, photographs, topics, given: [...rest, ...wordsGiven(values)] }, host);
    },
  },
  issue: {
    options: [
      "certificate",
      "draft",
      "earlier",
      "key",
      "out",
      "reason",
      "register",
      "replaces",
      "time-authority",
      "topics",
    ],
    async start(rest, values, host) {
      const { issueCommand } = await import("./commands/issue/issue.ts");
      const { "time-authority": timeAuthority, earlier = [], reason = [], draft = false, ...more } = values;
      const given = [...rest, ...wordsGiven(values)];
      return issueCommand(rest, { ...more, timeAuthority, earlier, reasons: reason, draft, given }, host);
    },
  },
  verify: {
    options: ["earlier", "json", "register", "root", "topics"],
    async start(rest, values, host) {
      const { verifyCommand } = await import("./commands/issue/verify.ts");
      const { earlier = [], json = false, ...more } = values;
      return verifyCommand(rest, { ...more, earlier, json }, host);
    },
  },
  keys: {
    options: ["as", "device", "key", "out", "person", "register", "since"],
    async start(rest, values, host) {
      const { keysCommand } = await import("./commands/issue/keys.ts");
      return keysCommand(rest, values, host);
    },
  },
  calendar: {
    options: ["out", "topics"],
    async start(rest, values, host) {
      const { calendarCommand } = await import("./commands/calendar.ts");
      const { out, topics } = values;
      return calendarCommand(rest, { out, topics, given: [...rest, ...wordsGiven(values)] }, host);
    },
  },
  compute: {
    options: ["list", "json"],
    async start(rest, { list = false, help = false, json = false }, host) {
      const { computeCommand } = await import("./commands/compute.ts");
      if (help && rest.length === 0) {
        host.stdout.write(USAGE);
        return EXIT.done;
      }
      return computeCommand(rest, { list, help, json }, host);
    },
  },
  "compare-choices": {
    options: ["by", "json", "topics"],
    async start(rest, { by, json = false, topics }, host) {
      const { compareChoicesCommand } = await import("./commands/compare-choices.ts");
      return compareChoicesCommand(rest, { by, json, topics }, host);
    },
  },
  reason: {
    options: ["list", "json", "topics"],
    async start(rest, { list = false, help = false, json = false, topics }, host) {
      const { reasonCommand } = await import("./commands/reason.ts");
      return reasonCommand(rest, { list, help, json, topics }, host);
    },
  },
  topics: {
    options: ["all", "check", "json", "topics"],
    async start(rest, { all = false, check = false, json = false, topics }, host) {
      const { topicsCommand } = await import("./commands/topics/topics.ts");
      return topicsCommand(rest, { all, check, json, topics }, host);
    },
  },
  "own-figures": {
    options: ["all", "earlier", "json"],
    async start(rest, values, host) {
      const { ownFiguresCommand } = await import("./commands/own-figures.ts");
      const { all = false, json = false } = values;
      const [earlier, ...more] = values.earlier ?? [];
      if (more.length > 0) throw new Stop(EXIT.input, "own-figures: holds against one earlier file. Name it once.");
      return ownFiguresCommand(rest, { earlier, all, json }, host);
    },
  },
  ring: {
    options: ["json"],
    async start(rest, { help = false, json = false }, host) {
      const { ringCommand } = await import("./commands/ring/ring.ts");
      return ringCommand(rest, { help, json }, host);
    },
  },
  schema: {
    options: [],
    async start(rest, _, host) {
      const { schemaCommand } = await import("./commands/schema.ts");
      return schemaCommand(rest, host);
    },
  },
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
    host.stdout.write(`${RELEASE}\n`);
    return EXIT.done;
  }
  if (command === undefined || (values.help === true && !OWN_HELP.has(command))) {
    (values.help === true ? host.stdout : host.stderr).write(USAGE);
    return values.help === true ? EXIT.done : EXIT.input;
  }
  const own = Object.hasOwn(COMMANDS, command) ? COMMANDS[command] : undefined;
  if (own === undefined) {
    throw new Stop(
      EXIT.input,
      `goodgrounds: no command is called ${JSON.stringify(command.slice(0, 40))}. The commands are weigh, report, document, issue, verify, keys, calendar, reason, compute, compare-choices, own-figures, ring, schema.`,
    );
  }
  const strange = Object.keys(values).find((name) => name !== "help" && !own.options.some((one) => one === name));
  if (strange !== undefined)
    throw new Stop(EXIT.input, `${command}: has no option --${strange}. \`goodgrounds --help\` shows what it has.`);
  return own.start(rest, values, host);
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
