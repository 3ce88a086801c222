import { crc32 as outside } from "node:zlib";
import fc from "fast-check";
import { expect, test } from "vitest";
import { crc32 } from "./crc32.ts";

test("the CRC-32 is the one of zlib", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      expect(crc32(bytes)).toBe(outside(bytes));
    }),
    { seed: 20261130 },
  );
});
