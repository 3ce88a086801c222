/** Characters that turn the order of others around, or that no file may hold. */
const TURNING =
  /[\u{61c}\u{200e}\u{200f}\u{202a}-\u{202e}\u{2066}-\u{2069}\u{fffe}\u{ffff}]|\p{Noncharacter_Code_Point}/gu;

/**
 * A text for other programs: characters that would make it read other than it was written are code points, "[U+202E]".
 * Letters of any language and signs stay as they are.
 */
export function seenText(text: string): string {
  return text.replaceAll(
    TURNING,
    (sign) => `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}]`,
  );
}
