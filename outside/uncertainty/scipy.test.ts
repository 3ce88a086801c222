import { execFileSync } from "node:child_process";
import { normalCdf } from "@good-grounds/measurement";
import { describe, expect, test } from "vitest";
import { needTool, PYTHON } from "../tools.ts";

const SCORES = Array.from({ length: 7601 }, (_, i) => (i - 3800) / 100 + 0.0037);

describe.skipIf(!needTool("scipy"))("normal distribution against a statistics library", () => {
  test("agrees to 1e-12, and to twelve digits in the lower tail", () => {
    const program =
      "import json,sys\nfrom scipy.stats import norm\nprint(json.dumps([float(norm.cdf(z)) for z in json.load(sys.stdin)]))";
    const answers: readonly number[] = JSON.parse(
      execFileSync(PYTHON, ["-c", program], { input: JSON.stringify(SCORES), encoding: "utf8" }),
    );
    expect(answers).toHaveLength(SCORES.length);
    for (const [i, z] of SCORES.entries()) {
      const answer = answers[i] as number;
      expect(Math.abs(normalCdf(z) - answer), `at ${z}`).toBeLessThan(1e-12);
      if (answer > 1e-300) expect(Math.abs(normalCdf(z) / answer - 1), `at ${z}`).toBeLessThan(1e-12);
    }
  });
});
