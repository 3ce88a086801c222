const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  return sum;
});

/** The CRC-32 of bytes (ISO 3309, as in zip and PNG files): it finds every burst of up to 32 wrong bits. */
export function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (TABLE[(sum ^ byte) & 0xff] as number) ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
