import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openKeyFile } from "@good-grounds/issue";
import { expect, test } from "vitest";
import { needTool, PYTHON } from "../tools.ts";

const path = (name: string) => fileURLToPath(new URL(name, import.meta.url));

test.runIf(needTool("scipy"))(
  "a passphrase typed at a terminal is not shown there, and can be mended while it is typed",
  async () => {
    const folder = mkdtempSync(join(tmpdir(), "typed-"));
    try {
      const key = join(folder, "key.json");
      const command = [process.execPath, path("../../apps/cli/src/main.ts"), "keys", "new"];
      const options = ["--person", "A. Sample", "--device", "desk", "--out", key];
      const typed = "four words that difer\u007F\u007F\u007Fffer\r";
      const shown = execFileSync(PYTHON, [path("typed.py"), typed, ...command, ...options], { encoding: "utf8" });
      expect(shown).toContain("A new passphrase for the key, then Enter: ");
      expect(shown).not.toMatch(/four|words|differ|\*/);
      expect((await openKeyFile(readFileSync(key, "utf8"), "four words that differ")).statement).toHaveLength(32);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
);
