// For the builds: the topics themselves in place of the module that reads their texts from the disk.

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
