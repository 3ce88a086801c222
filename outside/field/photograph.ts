/** An EXIF block that says where a photograph was taken: 51° 30' north, 0° 7' west. */
function exif(): Buffer {
  const tiff = Buffer.alloc(26 + 54 + 48);
  tiff.write("II*\0", 0, "latin1");
  tiff.writeUInt32LE(8, 4);
  // The first directory holds one entry: where the directory of the place lies.
  tiff.writeUInt16LE(1, 8);
  entry(tiff, 10, 0x8825, 4, 1, 26);
  tiff.writeUInt16LE(4, 26);
  entry(tiff, 28, 1, 2, 2, 0x4e);
  entry(tiff, 40, 2, 5, 3, 80);
  entry(tiff, 52, 3, 2, 2, 0x57);
  entry(tiff, 64, 4, 5, 3, 104);
  for (const [i, degrees] of [51, 30, 0, 0, 7, 0].entries()) {
    tiff.writeUInt32LE(degrees, 80 + 8 * i);
    tiff.writeUInt32LE(1, 84 + 8 * i);
  }
  return Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiff]);
}

function entry(into: Buffer, at: number, tag: number, type: number, count: number, value: number): void {
  into.writeUInt16LE(tag, at);
  into.writeUInt16LE(type, at + 2);
  into.writeUInt32LE(count, at + 4);
  into.writeUInt32LE(value, at + 8);
}

/** A JPEG file as a camera would have written it, with the place where it was taken. */
export function withPlace(jpeg: Buffer): Buffer {
  const block = exif();
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(block.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, block, jpeg.subarray(2)]);
}

/** Whether a JPEG file carries anything a camera writes beside the picture. */
export function hasExif(jpeg: Uint8Array): boolean {
  return Buffer.from(jpeg).includes("Exif");
}
