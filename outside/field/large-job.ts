/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { placesOf } from "../../apps/field/src/record/document.ts";
import type { Value } from "../../apps/field/src/record/entry.ts";
import { Record as JobRecord } from "../../apps/field/src/record/record.ts";

const EXAMPLE = fileURLToPath(new URL("../../examples/terraced-house.json", import.meta.url));
const AT = "2026-11-01T10:00:00Z";

/** How large a job is. */
interface Size {
  readonly circuits: number;
  readonly readingsEach: number;
}

type Circuit = { readonly id: string; readonly readings?: object };

/** A job as two people bring it home from a large house: circuits with their readings, and photographs by their hashes. */
export function largeJob(job: string, { circuits, readingsEach }: Size, photographs: readonly string[]): string {
  const house = JSON.parse(readFileSync(EXAMPLE, "utf8"));
  const [board] = house.boards as [{ circuits: Circuit[] }];
  const [like] = board.circuits as [Circuit];
  board.circuits = Array.from({ length: circuits }, (_, i) => ({ ...like, id: `c${i}`, readings: {} }));
  const record = new JobRecord();
  const write = (path: string, value: Value) => record.add(record.next("a", "", AT, path, value));
  for (const [path, value] of placesOf({ ...house, invented: false, title: "A large house" })) write(path, value);
  const names = ["r1r2", "r2", "zs", "insulationLiveEarth", "insulationLiveLive", "r1", "rn"];
  for (let i = 0; i < circuits; i++)
    for (const name of names.slice(0, readingsEach))
      write(`boards/cu/circuits/c${i}/readings/${name}`, { shown: `0.${30 + i} Ω`, with: "i1", at: AT });
  for (const [i, sha256] of photographs.entries()) {
    write(`photographs/p${i}/sha256`, sha256);
    write(`photographs/p${i}/caption`, `What was seen at point ${i}`);
  }
  return JSON.stringify({ job, entries: record.entries() });
}

/** Puts photographs as large as those of a phone onto the device; their hashes. Noise, which does not compress. */
export function putPhotographs(page: Page, count: number): Promise<readonly string[]> {
  return page.evaluate(async (wanted) => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle("photographs", { create: true });
    const [width, height] = [720, 540];
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("no canvas");
    const picture = context.createImageData(width, height);
    let state = 1;
    const hashes: string[] = [];
    for (let i = 0; i < wanted; i++) {
      for (let at = 0; at < picture.data.length; at++) {
        state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
        picture.data[at] = at % 4 === 3 ? 255 : state >>> 24;
      }
      context.putImageData(picture, 0, 0);
      const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.85 });
      const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", await blob.arrayBuffer()));
      const name = [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
      const writable = await (await folder.getFileHandle(`${name}.jpg`, { create: true })).createWritable();
      await writable.write(blob);
      await writable.close();
      hashes.push(name);
    }
    return hashes;
  }, count);
}

/** The photographs on the device whose bytes are what their names say, and how many bytes all have. */
export function soundPhotographs(page: Page): Promise<{ readonly sound: readonly string[]; readonly bytes: number }> {
  return page.evaluate(async () => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle("photographs", { create: true });
    const sound: string[] = [];
    let bytes = 0;
    for await (const handle of folder.values()) {
      const content = await (await (handle as FileSystemFileHandle).getFile()).arrayBuffer();
      const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
      const name = [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
      if (handle.name === `${name}.jpg`) sound.push(name);
      bytes += content.byteLength;
    }
    return { sound: sound.sort(), bytes };
  });
}
