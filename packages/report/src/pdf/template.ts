import { BACK } from "./template/back.ts";
import { BASE } from "./template/base.ts";
import { FRONT } from "./template/front.ts";
import { INSTALLATION } from "./template/installation.ts";

/**
 * The layout of the report. It is text in a module rather than a file of its own, so that the bundled command finds it
 * without knowing where it was installed. All words come from the data; nothing of it is ever taken as markup.
 */
export const TEMPLATE = [BASE, FRONT, INSTALLATION, BACK].join("");
