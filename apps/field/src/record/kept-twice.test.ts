import { beforeEach, expect, test, vi } from "vitest";
import { keepTwice, keptTwice } from "./kept-twice.ts";

const disk = vi.hoisted(() => ({
  database: new Map<string, unknown>(),
  files: new Map<string, string>(),
  fails: { database: false, files: false },
}));

vi.mock("./database.ts", () => ({
  setting: async (name: string) => disk.database.get(name),
  keepSetting: async (name: string, value: unknown) => {
    if (disk.fails.database) throw new Error("the database refuses");
    disk.database.set(name, structuredClone(value));
  },
  dropSetting: async (name: string) => void disk.database.delete(name),
}));

vi.mock("./job-files.ts", () => ({
  FilesAbsent: class extends Error {},
  FilesSilent: class extends Error {},
  readKeptFile: async (name: string) => disk.files.get(name) ?? null,
  writeKeptFile: async (name: string, text: string) => {
    if (disk.fails.files) throw new Error("the disk is full");
    disk.files.set(name, text);
  },
}));

beforeEach(() => {
  disk.database.clear();
  disk.files.clear();
  disk.fails = { database: false, files: false };
});

test("what is kept stands in both stores, and each alone is enough", async () => {
  await keepTwice("firm", "one");
  expect(await keptTwice("firm")).toBe("one");
  disk.database.clear();
  expect(await keptTwice("firm")).toBe("one");
  expect(disk.database.get("firm")).toEqual({ number: 1, value: "one" });
  disk.files.clear();
  expect(await keptTwice("firm")).toBe("one");
  expect(JSON.parse(disk.files.get("firm") ?? "")).toEqual({ number: 1, value: "one" });
});

test("of two that differ the one written last stands, taking out among it", async () => {
  await keepTwice("firm", "one");
  const before = disk.files.get("firm") ?? "";
  await keepTwice("firm", "two");
  disk.files.set("firm", before);
  expect(await keptTwice("firm")).toBe("two");
  await keepTwice("firm", null);
  disk.files.set("firm", before);
  expect(await keptTwice("firm")).toBeUndefined();
  expect(JSON.parse(disk.files.get("firm") ?? "")).toEqual({ number: 3, value: null });
});

test("a disk that refuses the file is told, though the database took it", async () => {
  disk.fails.files = true;
  await expect(keepTwice("firm", "one")).rejects.toThrow("the disk is full");
});

test("a database that refuses is not needed where the file has it", async () => {
  disk.fails.database = true;
  await keepTwice("firm", "one");
  expect(await keptTwice("firm")).toBe("one");
});
