import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
/** What lies in the built app and what npm says of every package that is not for development alone. */
interface Component {
  readonly name: string;
  readonly version: string;
  readonly purl: string;
  readonly hashes?: readonly { readonly alg: string; readonly content: string }[];
  readonly licenses?: readonly unknown[];
}

const json = (path: string) => JSON.parse(readFileSync(path, "utf8"));
const work = mkdtempSync(join(tmpdir(), "shipped-"));
const run = (script: string, target: string) =>
  execFileSync(process.execPath, [join(ROOT, script), target], { cwd: ROOT, stdio: ["ignore", "ignore", "inherit"] });
afterAll(() => rmSync(work, { recursive: true, force: true }));

describe("the built app", () => {
  const [one, two] = [join(work, "one"), join(work, "two")];
  beforeAll(() => {
    run("apps/field/build.mjs", one);
    run("apps/field/build.mjs", two);
  });

  test("comes out the same, byte for byte, when it is built again", () => {
    const files = readdirSync(one, { recursive: true }).map(String).sort();
    expect(readdirSync(two, { recursive: true }).map(String).sort()).toEqual(files);
    const differ = files.filter(
      (file) =>
        statSync(join(one, file)).isFile() && !readFileSync(join(one, file)).equals(readFileSync(join(two, file))),
    );
    expect(differ).toEqual([]);
    expect(files.length).toBeGreaterThan(100);
  });

  test("brings the licence of every package it uses, with its text", () => {
    const notices = readFileSync(join(one, "licences.txt"), "utf8");
    const packages = readdirSync(join(ROOT, "packages")).map((name) => `packages/${name}`);
    const named = new Set(
      [...packages, "apps/field"].flatMap((folder) => {
        const { dependencies = {} } = json(join(ROOT, folder, "package.json"));
        return Object.keys(dependencies).filter((name) => !name.startsWith("@good-grounds/"));
      }),
    );
    // The command alone lays out with this one.
    named.delete("@myriaddreamin/typst-ts-node-compiler");
    const missing = [...named].filter(
      (name) => !notices.includes(`\n${name} ${json(join(ROOT, "node_modules", name, "package.json")).version} (`),
    );
    expect(missing).toEqual([]);
    for (const words of [
      "Permission is hereby granted",
      "SIL OPEN FONT LICENSE",
      "Apache License",
      "Redistribution and use in source and binary forms",
    ])
      expect(notices).toContain(words);
  });

  test("holds itself to a policy without styles or scripts in the page", () => {
    const page = readFileSync(join(one, "index.html"), "utf8");
    const [, policy = ""] = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(page) ?? [];
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/unsafe-inline|unsafe-eval(?!')|POLICY|\*/);
    expect(page).not.toMatch(/<style|style=|<script(?![^>]*src=)/);
  });
});

test("the bill of materials names what is shipped, with hashes and licences, and is the same each time", () => {
  const [one, two] = [join(work, "one.json"), join(work, "two.json")];
  run("scripts/sbom.mjs", one);
  run("scripts/sbom.mjs", two);
  expect(readFileSync(two)).toEqual(readFileSync(one));
  const bill = json(one) as { readonly bomFormat: string; readonly components: readonly Component[] };
  expect(bill.bomFormat).toBe("CycloneDX");
  const { packages } = json(join(ROOT, "package-lock.json")) as {
    readonly packages: Readonly<
      Record<
        string,
        {
          readonly version: string;
          readonly dev?: boolean;
          readonly optional?: boolean;
          readonly link?: boolean;
          readonly integrity?: string;
        }
      >
    >;
  };
  const others = bill.components.filter(({ name }) => !name.startsWith("@good-grounds/"));
  for (const { name, version, purl, hashes, licenses } of others) {
    expect(purl, name).toBe(`pkg:npm/${name.replace("@", "%40")}@${version}`);
    expect(licenses?.length, name).toBeGreaterThan(0);
    const entry = Object.entries(packages).find(
      ([path, of]) => path.endsWith(`node_modules/${name}`) && of.version === version,
    );
    const said = Buffer.from((entry?.[1].integrity ?? "").replace("sha512-", ""), "base64").toString("hex");
    expect(hashes?.find(({ alg }) => alg === "SHA-512")?.content, name).toBe(said);
  }
  const shipped = Object.entries(packages).filter(
    ([path, { dev, optional, link }]) => path.includes("node_modules/") && !dev && !optional && !link,
  );
  const named = new Set(others.map(({ name, version }) => `${name}@${version}`));
  expect(
    shipped
      .map(([path, { version }]) => `${path.split("node_modules/").at(-1)}@${version}`)
      .filter((one) => !named.has(one)),
  ).toEqual([]);
});
