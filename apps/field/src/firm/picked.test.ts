import { hashOf } from "@good-grounds/topics/texts";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { textsOfFiles } from "./picked.ts";

const HEAD = "folder: A firm\n";
const SHARED = "# Words.\nshared kitchen: Kitchens\n";
const TOPIC = "topic a: A\n";
const ALL = [
  { file: "folder.topics", text: HEAD },
  { file: "shared/kitchen.topic", text: SHARED },
  { file: "topics/a.topic", text: TOPIC },
];

function file(name: string, content: string | Uint8Array, path = ""): File {
  const made = new File([content as BlobPart], name);
  Object.defineProperty(made, "webkitRelativePath", { value: path });
  return made;
}

const zip = (files: Readonly<Record<string, string>>) =>
  file("firm.zip", zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)]))));

describe("texts that were chosen", () => {
  it("come from a folder, whatever it is called, other files left alone", async () => {
    const chosen = [
      file("a.topic", TOPIC, "our topics/topics/a.topic"),
      file("folder.topics", HEAD, "our topics/folder.topics"),
      file("kitchen.topic", SHARED, "our topics/shared/kitchen.topic"),
      file("notes.txt", "left alone", "our topics/notes.txt"),
    ];
    expect(await textsOfFiles(chosen)).toEqual(ALL);
  });

  it("come from single files, shared ones told by their first line", async () => {
    const chosen = [file("kitchen.topic", SHARED), file("a.topic", TOPIC), file("folder.topics", HEAD)];
    expect(await textsOfFiles(chosen)).toEqual(ALL);
  });

  it("come from single files with the hash of their folder, what is more of a topic among them", async () => {
    const more = "more socket-near-water\n";
    const below = (text: { readonly file: string; readonly text: string }) =>
      file(text.file.split("/").at(-1) ?? "", text.text, `firm/${text.file}`);
    const all = [
      ...ALL,
      { file: "topics/our-water.topic", text: more },
      { file: "views.topics", text: "view a of b: c\n" },
    ];
    const single = all.map((text) => file(text.file.split("/").at(-1) ?? "", text.text));
    const [ofFolder, ofSingle] = await Promise.all([textsOfFiles(all.map(below)), textsOfFiles(single.reverse())]);
    expect(hashOf(ofSingle)).toBe(hashOf(ofFolder));
  });

  it("come from a ZIP archive, with or without the folder in front", async () => {
    const inside = {
      "folder.topics": HEAD,
      "shared/kitchen.topic": SHARED,
      "topics/a.topic": TOPIC,
      "read me.txt": "",
    };
    expect(await textsOfFiles([zip(inside)])).toEqual(ALL);
    const below = Object.fromEntries(Object.entries(inside).map(([name, text]) => [`firm/${name}`, text]));
    expect(await textsOfFiles([zip({ ...below, "__MACOSX/firm/._folder.topics": "x" })])).toEqual(ALL);
    const astray = [...ALL, { file: "elsewhere/b.topic", text: TOPIC }].sort((a, b) => (a.file < b.file ? -1 : 1));
    expect(await textsOfFiles([zip({ ...below, "elsewhere/b.topic": TOPIC })])).toEqual(astray);
  });

  it("keep the mark in front, which belongs to what is hashed", async () => {
    const [head] = await textsOfFiles([file("folder.topics", `\uFEFF${HEAD}`)]);
    expect(head?.text).toBe(`\uFEFF${HEAD}`);
  });

  it("are refused with the reason", async () => {
    await expect(textsOfFiles([file("notes.txt", "x")])).rejects.toThrow(/no text of topics/);
    await expect(textsOfFiles([file("a.topic", new Uint8Array([0xff, 0xfe]))])).rejects.toThrow(/a\.topic: not UTF-8/);
    await expect(textsOfFiles([file("a.topic", TOPIC), file("a.topic", TOPIC)])).rejects.toThrow(/chosen twice/);
    await expect(textsOfFiles([file("a.topic", "x".repeat(1_000_001))])).rejects.toThrow(/1000001 bytes/);
    await expect(textsOfFiles([file("firm.zip", "no archive")])).rejects.toThrow(/firm\.zip: not a ZIP archive/);
    const many = Array.from({ length: 2001 }, (_, i) => file(`t${i}.topic`, TOPIC));
    await expect(textsOfFiles(many)).rejects.toThrow(/2001 texts/);
    const damaged = zipSync({ "folder.topics": [strToU8(HEAD.repeat(50)), { level: 0 }] });
    damaged[60] = 1;
    await expect(textsOfFiles([file("firm.zip", damaged)])).rejects.toThrow(/damaged/);
  });
});
