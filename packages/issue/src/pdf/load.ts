import { PDF } from "@libpdf/core";

/**
 * Opens a document as it stands. A document that was issued is well formed; one that is not is refused here rather than
 * mended by guesses, which could read another document than the one signed, and never comes to an end on some.
 * @throws where the document is not well formed
 */
export const loadAsItStands = (file: Uint8Array): Promise<PDF> => PDF.load(file, { lenient: false });
