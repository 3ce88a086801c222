/** The SHA-256 of bytes in hexadecimal. */
export async function hashOf(bytes: Uint8Array | ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes as BufferSource));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Whether a word is such a hash. */
export function isHash(word: unknown): word is string {
  return typeof word === "string" && /^[0-9a-f]{64}$/.test(word);
}
