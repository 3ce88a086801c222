/** The longest side of a kept photograph in pixels: enough to read a rating plate, small enough for a whole job. */
const LONGEST = 2000;
const QUALITY = 0.85;

export interface TakenIn {
  readonly sha256: string;
  readonly bytes: Blob;
}

/**
 * A photograph made fit to keep: drawn anew at no more than {@link LONGEST} pixels, which leaves behind everything the
 * camera wrote into the file, the place where it was taken among it.
 */
export async function takenIn(file: Blob): Promise<TakenIn> {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(picture.width * scale)),
    Math.max(1, Math.round(picture.height * scale)),
  );
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("this browser cannot draw the photograph");
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const bytes = await canvas.convertToBlob({ type: "image/jpeg", quality: QUALITY });
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", await bytes.arrayBuffer()));
  return { sha256: [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join(""), bytes };
}
