import { crc32 } from "node:zlib";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checksum } from "./checksum.ts";
import { frame, unframe } from "./framing.ts";

const FIXED = { seed: 20261130, numRuns: 500 };
const texts = fc.array(fc.string({ unit: "grapheme", maxLength: 60 }), { maxLength: 12 });

function joined(all: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(all.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const one of all) {
    bytes.set(one, at);
    at += one.length;
  }
  return bytes;
}

const file = (all: readonly string[]) => joined(all.map(frame));

describe("a checksum", () => {
  test("is the CRC-32 of the outside", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(checksum(bytes)).toBe(crc32(bytes));
      }),
      FIXED,
    );
  });
});

describe("texts in frames", () => {
  test("come back as they were written", () => {
    fc.assert(
      fc.property(texts, (all) => {
        expect(unframe(file(all))).toEqual({ texts: all, damagedBytes: 0 });
      }),
      FIXED,
    );
  });

  test("cut anywhere, all that are whole before the cut come back, and what is written behind it", () => {
    fc.assert(
      fc.property(texts, fc.nat(), texts, (all, where, later) => {
        const bytes = file(all);
        const cut = where % (bytes.length + 1);
        const whole = all.filter((_, i) => file(all.slice(0, i + 1)).length <= cut);
        const lost = cut - file(whole).length;
        expect(unframe(bytes.subarray(0, cut))).toEqual({ texts: whole, damagedBytes: lost });
        const found = unframe(joined([bytes.subarray(0, cut), file(later)]));
        expect(found).toEqual({ texts: [...whole, ...later], damagedBytes: lost });
      }),
      FIXED,
    );
  });
});

describe("texts in damaged frames", () => {
  test("with any one bit turned over, exactly the text that held it is missing", () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ maxLength: 40 }), { minLength: 1, maxLength: 8 }),
        fc.nat(),
        fc.nat({ max: 7 }),
        (all, where, bit) => {
          const bytes = file(all);
          const at = where % bytes.length;
          bytes[at] = (bytes[at] as number) ^ (1 << bit);
          const hit = all.findIndex((_, i) => file(all.slice(0, i + 1)).length > at);
          const { texts: found, damagedBytes } = unframe(bytes);
          expect(found).toEqual(all.filter((_, i) => i !== hit));
          expect(damagedBytes).toBe(frame(all[hit] as string).length);
        },
      ),
      { ...FIXED, numRuns: 2000 },
    );
  });

  test("with anything in between, before or behind, all of them come back and nothing else does", () => {
    // Pieces of frames, and the bytes that frames are made of, are the garbage that could mislead most.
    const garbage = fc.oneof(
      fc.uint8Array({ maxLength: 40 }),
      fc.array(fc.constantFrom(0xff, 0x47, 0xfe, 0), { maxLength: 40 }).map((all) => Uint8Array.from(all)),
      fc
        .tuple(fc.string({ maxLength: 30 }), fc.nat({ max: 40 }))
        .map(([text, cut]) => frame(text).subarray(0, Math.min(cut, frame(text).length - 1))),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(garbage, fc.string({ maxLength: 30 })), { maxLength: 8 }), garbage, (all, tail) => {
        const bytes = joined([...all.flatMap(([before, text]) => [before, frame(text)]), tail]);
        const { texts: found, damagedBytes } = unframe(bytes);
        expect(found).toEqual(all.map(([, text]) => text));
        expect(damagedBytes).toBe(all.reduce((sum, [{ length }]) => sum + length, tail.length));
      }),
      FIXED,
    );
  });

  test("of which stretches were overwritten, none comes back altered", () => {
    fc.assert(
      fc.property(texts, fc.array(fc.tuple(fc.nat(), fc.uint8Array({ maxLength: 30 }))), (all, wounds) => {
        const bytes = file(all);
        for (const [where, wound] of wounds) {
          const at = where % (bytes.length + 1);
          bytes.set(wound.subarray(0, bytes.length - at), at);
        }
        const left = [...all];
        for (const text of unframe(bytes).texts) {
          // In their order too: each is looked for behind the one before.
          const place = left.indexOf(text);
          expect(place).not.toBe(-1);
          left.splice(0, place + 1);
        }
      }),
      FIXED,
    );
  });
});
