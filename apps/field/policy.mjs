// What the app may load and who may show it within a page of theirs. In force twice: as headers by whoever serves the app, and
// within the page itself where a host sends none.

const DIRECTIVES = {
  "default-src": "'self'",
  "img-src": "'self' blob: data:",
  "style-src": "'self'",
  "script-src": "'self' 'wasm-unsafe-eval'",
  "connect-src": "'self'",
  "worker-src": "'self'",
  "object-src": "'none'",
  "base-uri": "'none'",
  "form-action": "'none'",
};

const written = (directives) =>
  Object.entries(directives)
    .map(([name, sources]) => `${name} ${sources}`)
    .join("; ");

/** The policy as it stands in the page. Browsers take no frame-ancestors from there. */
export const PAGE_POLICY = written(DIRECTIVES);

/**
 * What whoever serves the app sends with its page. Not with its scripts: a worker takes its policy from its own file, and
 * the layout engine makes functions from text, which this policy refuses.
 */
export const PAGE_HEADERS = { "content-security-policy": written({ ...DIRECTIVES, "frame-ancestors": "'none'" }) };

/** What whoever serves the app sends with every file of it. */
export const HEADERS = {
  "cross-origin-opener-policy": "same-origin",
  "permissions-policy": "camera=(self), geolocation=(), microphone=()",
  "referrer-policy": "no-referrer",
  "x-content-type-options": "nosniff",
};
