export { wordsOfCell } from "./cell-words.ts";
export { htmlOf } from "./html.ts";
export * from "./model.ts";
export { bareText, linesOf, plainText } from "./plain-text.ts";
export { type TypstDocument, typstOf } from "./typst.ts";
