// For the builds: the topics themselves in place of the module that reads their texts from the disk.

/** An esbuild plugin. The texts are read, and held to the rules, once for each build. */
export function gatheredTopics() {
  return {
    name: "gathered-topics",
    setup(build) {
      build.onLoad({ filter: /[\\/]packages[\\/]topics[\\/]src[\\/]gathered\.ts$/ }, async ({ path }) => {
        const { TOPICS } = await import(path);
        // As a text that is parsed: an engine reads it faster than the same as an object literal.
        return {
          contents: `export const TOPICS = JSON.parse(${JSON.stringify(JSON.stringify(TOPICS))});`,
          loader: "js",
        };
      });
    },
  };
}
