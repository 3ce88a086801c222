// Which way imports may point, and what a pure package may not use. See ARCHITECTURE.md.

export const scope = "@good-grounds/";

/**
 * By folder under packages/. `packages`: which of ours it may import. `outside`: which packages from npm.
 * `nodeIn`: the folder whose files, or the file that, may use Node's own modules.
 */
export const packageRules = {
  core: { packages: [], outside: [] },
  tables: { packages: ["core"], outside: [] },
  inspection: { packages: ["core"], outside: ["zod", "@noble/hashes"] },
  topics: { packages: ["core"], outside: ["@noble/hashes"], nodeIn: "src/texts.js" },
  measurement: { packages: ["core", "tables", "inspection"], outside: [] },
  computations: { packages: ["core", "tables", "inspection", "measurement"], outside: [] },
  readings: { packages: ["core", "tables", "inspection", "measurement", "computations"], outside: [] },
  judgement: {
    packages: ["core", "tables", "inspection", "topics", "measurement", "computations", "readings"],
    outside: [],
  },
  assembly: {
    packages: [
      "core",
      "tables",
      "inspection",
      "topics",
      "measurement",
      "computations",
      "readings",
      "judgement",
      "report",
    ],
    outside: [],
  },
  issue: {
    packages: ["core", "inspection"],
    outside: ["@libpdf/core", "@noble/ciphers", "@noble/curves", "@noble/hashes", "asn1js", "pkijs"],
  },
  report: { packages: ["core", "inspection"], outside: "any", nodeIn: "src/pdf/" },
};

/** A conclusion must come out the same wherever and whenever it is worked out, so these may not look around them. */
export const purePackages = ["core", "tables", "topics", "measurement", "computations", "readings", "judgement"];

const clock = "the date passed in as a value";
const locale = "numbers and words put into a language by packages/report";
const host = "no use of the machine: pass values in, return values or issues";

export const impurities = [
  { pattern: /(?<![\w$.])Date\s*\.\s*now\b/g, expected: clock },
  { pattern: /(?<![\w$.])new\s+Date\b(?!\s*\(\s*[^\s)])(?:\s*\(\s*\))?/g, expected: clock },
  { pattern: /(?<![\w$.]|new\s+)Date\s*\(/g, expected: clock },
  { pattern: /(?<![\w$.])Math\s*\.\s*random\b/g, expected: "no chance: the same facts give the same conclusion" },
  { pattern: /(?<![\w$])toLocale\w*/g, expected: locale },
  { pattern: /(?<![\w$])localeCompare\b/g, expected: "comparison by code unit (< and >), the same everywhere" },
  { pattern: /(?<![\w$.])Intl\b(?!\s*\??:)/g, expected: locale },
  { pattern: /(?<![\w$.])(?:process|console|globalThis)\b(?!\s*\??:)/g, expected: host },
];
