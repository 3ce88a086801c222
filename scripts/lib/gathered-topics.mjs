// For the builds: the topics themselves in place of the module that reads their texts from the disk.
import { writeFileSync } from "node:fs";
import { join } from "node:path";

/** An esbuild plugin. The texts are read, and held to the rules, once for each build; worked examples may stay behind. */
export function gatheredTopics({ examples = true } = {}) {
  return {
    name: "gathered-topics",
    setup(build) {
      build.onLoad({ filter: /[\\/]packages[\\/]topics[\\/]src[\\/]gathered\.ts$/ }, async ({ path }) => {
        const { TOPICS } = await import(path);
        const carried = examples ? TOPICS : TOPICS.map((topic) => ({ ...topic, examples: [] }));
        // As a text that is parsed: an engine reads it faster than the same as an object literal.
        return {
          contents: `export const TOPICS = JSON.parse(${JSON.stringify(JSON.stringify(carried))});`,
          loader: "js",
        };
      });
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
export function topicsBeside(file) {
  return {
    name: "topics-beside",
    setup(build) {
      build.onLoad({ filter: /[\\/]packages[\\/]topics[\\/]src[\\/]gathered\.ts$/ }, () => ({
        contents: `export { TOPICS } from ${JSON.stringify(file)};`,
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
