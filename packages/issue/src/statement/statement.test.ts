import { ed25519 } from "@noble/curves/ed25519.js";
import { bytesToHex, hexToBytes } from "@noble/hashes/utils.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonical } from "./canonical.ts";
import { type Line, StatementFault, statementBytes } from "./lines.ts";
import { isSigned } from "./signed.ts";
import { readCanonical, readStrict } from "./strict.ts";

/** RFC 8032, section 7.1: secret, public key, message, signature. */
const RFC_8032 = [
  [
    "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
    "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
    "",
    "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
  ],
  [
    "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
    "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
    "72",
    "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
  ],
  [
    "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
    "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
    "af82",
    "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
  ],
] as const;

describe("published vectors", () => {
  test.each(RFC_8032)("RFC 8032, section 7.1: key %s", (secret, key, message, signature) => {
    expect(bytesToHex(ed25519.getPublicKey(hexToBytes(secret)))).toBe(key);
    expect(bytesToHex(ed25519.sign(hexToBytes(message), hexToBytes(secret)))).toBe(signature);
    expect(isSigned(hexToBytes(message), signature, key)).toBe(true);
    expect(isSigned(hexToBytes(`${message}00`), signature, key)).toBe(false);
    expect(isSigned(hexToBytes(message), "0".repeat(128), key)).toBe(false);
  });

  test("RFC 8785, section 3.2.2: numbers, strings and literals", () => {
    const text = String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`;
    expect(canonical(readStrict(text))).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  test("RFC 8785, section 3.2.3: members in the order of UTF-16 units", () => {
    const value = { "\u20ac": 1, "\r": 2, "\ufb33": 3, "1": 4, "\u{1f600}": 5, "\u0080": 6, "\u00f6": 7 };
    const names = [...canonical(value).matchAll(/:(\d)/g)].map(([, number]) => number).join("");
    expect(names).toBe("2467153");
  });

  test.each([
    ["0000000000000000", "0"],
    ["8000000000000000", "0"],
    ["0000000000000001", "5e-324"],
    ["7fefffffffffffff", "1.7976931348623157e+308"],
    ["4340000000000000", "9007199254740992"],
    ["44b52d02c7e14af5", "9.999999999999997e+22"],
    ["44b52d02c7e14af6", "1e+23"],
    ["444b1ae4d6e2ef4f", "999999999999999900000"],
    ["444b1ae4d6e2ef50", "1e+21"],
    ["3eb0c6f7a0b5ed8d", "0.000001"],
    ["41b3de4355555553", "333333333.3333332"],
    ["41b3de4355555557", "333333333.33333343"],
  ])("RFC 8785, appendix B: %s is %s", (bits, written) => {
    const view = new DataView(hexToBytes(bits).buffer);
    expect(canonical(view.getFloat64(0))).toBe(written);
  });
});

describe("what two programs could read differently", () => {
  test.each([
    ['{"a":1,"a":2}', "twice"],
    [String.raw`{"a":1,"\u0061":2}`, "twice"],
    [String.raw`{"a":"\ud800"}`, "half of a character"],
    [String.raw`{"\udc00":1}`, "half of a character"],
    ["{a:1}", "no JSON"],
  ])("%s is refused", (text, words) => {
    expect(() => readStrict(text)).toThrow(words);
    expect(() => readStrict(text)).toThrow(StatementFault);
  });

  test.each(['{ "a":1}', '{"b":1,"a":2}', '{"a":1.0}', String.raw`{"a":"\u0041"}`])(
    "%s is not the one spelling",
    (text) => {
      expect(() => readCanonical(text)).toThrow("written otherwise");
    },
  );
});

const line = fc.oneof(
  fc.tuple(fc.string(), fc.constant("text" as const), fc.string({ unit: "grapheme" })),
  fc.tuple(fc.string(), fc.constant("decimal" as const), fc.integer().map(String)),
);

describe("the bytes of a statement", () => {
  test("are those of no other statement", () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 4 }), fc.array(line, { maxLength: 4 }), (one, other) => {
        const same = JSON.stringify(one) === JSON.stringify(other);
        expect(bytesToHex(statementBytes(one)) === bytesToHex(statementBytes(other))).toBe(same);
      }),
    );
    // What a plain joining of the texts would take for the same.
    const [a, b]: readonly (readonly Line[])[] = [[["ab", "text", "c"]], [["a", "text", "bc"]]];
    expect(statementBytes(a ?? [])).not.toEqual(statementBytes(b ?? []));
    expect(statementBytes([["n", "text", "1"]])).not.toEqual(statementBytes([["n", "decimal", "1"]]));
  });

  test.each([
    ["decimal", "1e3"],
    ["decimal", "01"],
    ["decimal", "+1"],
    ["bytes", "0"],
    ["bytes", "AB"],
    ["moment", "2026-10-07"],
    ["text", "\ud800"],
  ] as const)("%s %s is refused", (kind, value) => {
    expect(() => statementBytes([["line", kind, value]])).toThrow(StatementFault);
  });
});
