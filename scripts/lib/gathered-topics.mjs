// For the builds: the topics themselves in place of the module that reads their texts from the disk.
import { writeFileSync } from "node:fs";
import { join } from "node:path";

const GATHERED = { filter: /[\\/]packages[\\/]topics[\\/]src[\\/]gathered\.ts$/ };

/** What stands in place of the module: each topic a text of its own that is parsed when it is first asked for. */
function asked(ids, textOf) {
  return `
const IDS = new Set(${ids});
const made = new Map();
export function ownTopic(id) {
  let topic = made.get(id);
  if (topic === undefined && IDS.has(id)) made.set(id, (topic = JSON.parse(${textOf})));
  return topic;
}
let all;
export function ownTopics() {
  all ??= [...IDS].map(ownTopic);
  return all;
}`;
}

/** An esbuild plugin. The texts are read, and held to the rules, once for each build; worked examples may stay behind. */
export function gatheredTopics({ examples = true } = {}) {
  return {
    name: "gathered-topics",
    setup(build) {
      build.onLoad(GATHERED, async ({ path }) => {
        const topics = (await import(path)).ownTopics();
        const texts = topics.map((topic) => [topic.id, JSON.stringify(examples ? topic : { ...topic, examples: [] })]);
        return {
          contents: `const TEXTS = new Map(${JSON.stringify(texts)});\n${asked("TEXTS.keys()", "TEXTS.get(id)")}`,
          loader: "js",
        };
      });
    },
  };
}

/**
 * An esbuild plugin for a program on Node: the topics are a file of their own, `own-topics.json` in the folder of the output,
 * one topic a line, of which a run decodes those it asks for.
 */
export function topicsBeside(folder) {
  return {
    name: "topics-beside",
    setup(build) {
      let lines = [];
      build.onLoad(GATHERED, async ({ path }) => {
        const topics = (await import(path)).ownTopics();
        lines = topics.map((topic) => Buffer.from(`${JSON.stringify(topic)}\n`));
        let end = 0;
        const places = lines.map((line, i) => {
          end += line.length;
          return [topics[i].id, end - line.length, end];
        });
        const head = [
          'import { readFileSync } from "node:fs";',
          `const PLACES = new Map(${JSON.stringify(places)}.map(([id, from, to]) => [id, [from, to]]));`,
          "let bytes;",
          "function textOf(id) {",
          '  bytes ??= readFileSync(new URL("./own-topics.json", import.meta.url));',
          '  return bytes.toString("utf8", ...PLACES.get(id));',
          "}",
        ].join("\n");
        return { contents: `${head}\n${asked("PLACES.keys()", "textOf(id)")}`, loader: "js" };
      });
      build.onEnd(() => writeFileSync(join(folder, "own-topics.json"), Buffer.concat(lines)));
    },
  };
}

/**
 * An esbuild plugin for a program that shows texts and reads others beside them: they are a file of their own, `own-texts.json`
 * in the folder of the output, so that a program that only reasons does not load them.
 */
export function textsBeside(folder) {
  return {
    name: "texts-beside",
    setup(build) {
      build.onLoad({ filter: /[\\/]packages[\\/]topics[\\/]src[\\/]texts\.js$/ }, () => ({
        contents: [
          'import { readFileSync } from "node:fs";',
          'export const ownTexts = () => JSON.parse(readFileSync(new URL("./own-texts.json", import.meta.url), "utf8"));',
        ].join("\n"),
        loader: "js",
      }));
      build.onEnd(async () => {
        const { ownTexts } = await import("../../packages/topics/src/texts.js");
        writeFileSync(join(folder, "own-texts.json"), JSON.stringify(ownTexts()));
      });
    },
  };
}

/** An esbuild plugin for programs in several parts that run together: all of them load the topics from one file beside them. */
export function topicsFrom(file) {
  return {
    name: "topics-from",
    setup(build) {
      build.onLoad(GATHERED, () => ({
        contents: `export { ownTopic, ownTopics } from ${JSON.stringify(file)};`,
        loader: "js",
      }));
      build.onResolve({ filter: /\.js$/ }, ({ path }) =>
        path === file ? { path, external: true, sideEffects: false } : undefined,
      );
    },
  };
}

/** An esbuild plugin for a part that reads texts: the texts of this project come with it. */
export function textsWithin() {
  return {
    name: "texts-within",
    setup(build) {
      build.onLoad({ filter: /[\\/]packages[\\/]topics[\\/]src[\\/]texts\.js$/ }, async ({ path }) => {
        const { ownTexts } = await import(path);
        return {
          contents: `export const ownTexts = () => JSON.parse(${JSON.stringify(JSON.stringify(ownTexts()))});`,
          loader: "js",
        };
      });
    },
  };
}
