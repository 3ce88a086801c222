import { sheetOf } from "./html/sheet.ts";
import { escaped, Writer } from "./html/writer.ts";
import type { Document } from "./model.ts";

/**
 * A document as one HTML file that needs nothing beside it: no script, no request, the style within, drawings and
 * photographs inside. It reads well by ear and by keyboard, on a phone and in print.
 */
export function htmlOf(document: Document): string {
  const { running } = document;
  const body = new Writer(document).blocks(document.blocks);
  const notes = [running.draft, running.invented].filter((words) => words !== "");
  return [
    "<!DOCTYPE html>",
    '<html lang="en-GB">',
    "<head>",
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    // Nothing is fetched and nothing runs, whatever a text of the file contains.
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">`,
    `<meta name="description" content="${escaped(document.description)}">`,
    ...document.authors.map((name) => `<meta name="author" content="${escaped(name)}">`),
    `<title>${escaped(document.title)}</title>`,
    `<style>${sheetOf(document)}</style>`,
    "</head>",
    "<body>",
    `<a class="skip" href="#said">${escaped(running.skip)}</a>`,
    `<header class="running"><p>${escaped(running.head)}</p>${notes.map((words) => `<p class="notice">${escaped(words)}</p>`).join("")}</header>`,
    `<main id="said" tabindex="-1">${body}</main>`,
    `<footer class="running"><p>${escaped(running.foot)}</p></footer>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}
