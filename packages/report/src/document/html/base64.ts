/** Bytes as base64, on every device. */
export function base64(bytes: Uint8Array): string {
  let text = "";
  // In pieces: a call takes only so many arguments.
  for (let i = 0; i < bytes.length; i += 0x2000) text += String.fromCharCode(...bytes.subarray(i, i + 0x2000));
  return btoa(text);
}
