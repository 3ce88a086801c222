import { execFileSync } from "node:child_process";

/** The Python that has the statistics libraries; `npm test` names it. */
export const PYTHON = process.env.GOOD_GROUNDS_PYTHON ?? "/usr/bin/python3";

const PROBES: Readonly<Record<string, readonly [string, readonly string[]]>> = {
  ngspice: ["ngspice", ["--version"]],
  qpdf: ["qpdf", ["--version"]],
  pdfinfo: ["pdfinfo", ["-v"]],
  pdfsig: ["pdfsig", ["-v"]],
  openssl: ["openssl", ["version"]],
  scipy: [PYTHON, ["-c", "import scipy.stats"]],
  chromium: ["/usr/bin/chromium", ["--version"]],
  statsmodels: [PYTHON, ["-c", "import statsmodels.stats.inter_rater"]],
};

/**
 * Whether an outside tool is there. A missing tool is said aloud, and where the project's checks run unattended (CI)
 * it is an error: a comparison that did not happen must not look like one that agreed.
 */
export function needTool(name: keyof typeof PROBES & string): boolean {
  const [command, args] = PROBES[name] as readonly [string, readonly string[]];
  try {
    execFileSync(command, args, { stdio: "ignore" });
    return true;
  } catch {
    if (process.env.CI === "true")
      throw new Error(`${name} is not installed, and the comparison with it is part of the checks`);
    process.stderr.write(`NOT CHECKED: ${name} is not installed; install it to run the comparison with it\n`);
    return false;
  }
}
