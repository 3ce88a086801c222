/** Hands a file to the person: by the share sheet where the device has one for files, else as a download. */
export async function save(name: string, type: string, bytes: Uint8Array | string): Promise<void> {
  const blob = new Blob([bytes as BlobPart], { type });
  const file = new File([blob], name, { type });
  if (navigator.canShare?.({ files: [file] }) === true && matchMedia("(pointer: coarse)").matches) {
    try {
      await navigator.share({ files: [file] });
      return;
    } catch (error) {
      // Closing the sheet is a choice; anything else falls back to a download.
      if (error instanceof DOMException && error.name === "AbortError") return;
    }
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
