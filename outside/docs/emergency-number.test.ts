import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const ROOT = new URL("../../", import.meta.url);

/** Every text a reader may be shown: words of reports, app and command line, topics, examples and pages of documentation. */
const SHOWN = ["packages/report/src", "packages/topics/text", "apps/field/src", "apps/cli/src", "docs"];

test("the number of the emergency line stands in one place, where the nation decides on it", () => {
  const found = SHOWN.flatMap((folder) =>
    readdirSync(new URL(`${folder}/`, ROOT), { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile() && /\.(?:tsx?|md|html|topic)$/.test(one.name) && !/\.test\.tsx?$/.test(one.name))
      .map(({ parentPath, name }) => `${parentPath}/${name}`)
      .filter((path) =>
        readFileSync(path, "utf8")
          .split("\n")
          .some((line) => /\b105\b/.test(line) && /emergency|distributor|power (?:cut|network)|\bcall\b/i.test(line)),
      ),
  );
  expect(found).toEqual([]);
});
