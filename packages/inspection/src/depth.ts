const [QUOTE, BACKSLASH] = [0x22, 0x5c];
const [OPEN_OBJECT, CLOSE_OBJECT, OPEN_LIST, CLOSE_LIST] = [0x7b, 0x7d, 0x5b, 0x5d];

/**
 * Whether objects and lists of a JSON text stand more than `most` deep within each other. Nesting takes far more memory
 * than the text it is written in, so it is looked at before the text is read; the text need not be JSON.
 */
export function deeperThan(text: string, most: number): boolean {
  let depth = 0;
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (inString) {
      if (code === BACKSLASH) at += 1;
      else if (code === QUOTE) inString = false;
    } else if (code === QUOTE) inString = true;
    else if (code === OPEN_OBJECT || code === OPEN_LIST) {
      depth += 1;
      if (depth > most) return true;
    } else if (code === CLOSE_OBJECT || code === CLOSE_LIST) depth -= 1;
  }
  return false;
}
