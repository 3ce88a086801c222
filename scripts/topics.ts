/** Writes docs/topics.md: every topic with what was proved of it. */
import { writeFileSync } from "node:fs";
import { topicsMarkdown } from "../outside/topics/topics-markdown.ts";

writeFileSync(new URL("../docs/topics.md", import.meta.url), topicsMarkdown());
