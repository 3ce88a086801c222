// Programs that are not ours, against which some tests check our answers: a circuit simulator, a statistics
// library, PDF readers. They come from the operating system, so they can be missing.
import { findProgram, run } from "./run.mjs";

const programs = [
  { debian: "qpdf", names: ["qpdf"], checks: "the structure of the PDF report" },
  {
    debian: "poppler-utils",
    names: ["pdfinfo", "pdfdetach", "pdftoppm", "pdfsig"],
    checks: "the content of the PDF report",
  },
  { debian: "openssl", names: ["openssl"], checks: "signatures against another implementation" },
  { debian: "chromium", names: ["chromium"], checks: "the field app in a browser" },
  { debian: "ngspice", names: ["ngspice"], checks: "circuit calculations against a circuit simulator" },
];
const libraries = [
  { debian: "python3-scipy", module: "scipy", checks: "sampling figures against a statistics library" },
  { debian: "python3-statsmodels", module: "statsmodels", checks: "figures of agreement against a statistics library" },
];

// The system's libraries belong to the system's Python; another Python may come first on PATH.
const pythons = ["/usr/bin/python3", "python3"];

async function has(python, module) {
  const { code } = await run(python, ["-c", `import ${module}`], { capture: true });
  return code === 0;
}

/** The Python that has most of the libraries, with those it has not. */
async function pythonWithLibraries() {
  let best = { python: undefined, without: libraries };
  for (const python of pythons) {
    const without = [];
    for (const library of libraries) if (!(await has(python, library.module))) without.push(library);
    if (without.length < best.without.length) best = { python, without };
  }
  return best;
}

async function lookAround() {
  const missing = programs.filter(({ names }) => !names.every((name) => findProgram(name)));
  const { python, without } = await pythonWithLibraries();
  return { missing: [...missing, ...without], python };
}

function canInstall() {
  return process.platform === "linux" && process.getuid?.() === 0 && findProgram("apt-get") !== undefined;
}

async function installWithApt(missing) {
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  const names = missing.map(({ debian }) => debian);
  console.log(`Installing ${names.join(", ")} with apt-get.`);
  // A failed update is not the end: the lists already on the machine may do.
  await run("apt-get", ["update", "-qq"], { env });
  await run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...names], { env });
}

/** Finds the outside tools, installing them where that is possible. */
export async function outsideTools() {
  const found = await lookAround();
  if (found.missing.length === 0 || !canInstall()) return found;
  await installWithApt(found.missing);
  return lookAround();
}

/** How the tests learn what there is: they skip what needs a tool listed here, and say so. */
export function outsideToolsEnv({ missing, python }) {
  return {
    GOOD_GROUNDS_MISSING_TOOLS: missing.map(({ debian }) => debian).join(","),
    ...(python ? { GOOD_GROUNDS_PYTHON: python } : {}),
  };
}

export function describeMissing(missing) {
  const lines = missing.map(({ debian, checks }) => `  ${debian.padEnd(14)} checks ${checks}`);
  const names = missing.map(({ debian }) => debian).join(" ");
  return [
    "Missing outside tools:",
    ...lines,
    `On Debian or Ubuntu:  sudo apt-get install --no-install-recommends ${names}`,
  ].join("\n");
}
