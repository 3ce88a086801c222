/**
 * What became of a file that was handed to the person: `done`, `put off` where they closed the share sheet, or `asked`
 * where the browser opens one only at a touch and the last one was too long ago.
 */
export type Handed = "done" | "put off" | "asked";

/** Hands a file to the person: by the share sheet where the device has one for files, else as a download. */
export async function save(name: string, type: string, content: Blob | Uint8Array | string): Promise<void> {
  const file = fileOf(name, type, content);
  // What took long to make is downloaded where the sheet can no longer be opened.
  if ((await handOver(file)) === "asked") download(file);
}

/** A file under a name; the bytes of a blob stay where they are. */
export function fileOf(name: string, type: string, content: Blob | Uint8Array | string): File {
  return new File([content as BlobPart], name, { type });
}

/** Opens the share sheet, or downloads where there is none for this file. */
export async function handOver(file: File): Promise<Handed> {
  if (navigator.canShare?.({ files: [file] }) !== true || !matchMedia("(pointer: coarse)").matches) {
    download(file);
    return "done";
  }
  if (navigator.userActivation?.isActive === false) return "asked";
  try {
    await navigator.share({ files: [file] });
  } catch (error) {
    // Closing the sheet is a choice; anything else falls back to a download.
    if (error instanceof DOMException && error.name === "AbortError") return "put off";
    download(file);
  }
  return "done";
}

function download(file: File): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
