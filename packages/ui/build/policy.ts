/**
 * What the page may do: run its own code and styles, and ask nobody else for anything. WebAssembly may be compiled,
 * text may not be run as code.
 */
const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "frame-src 'none'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
]

/** For the page itself, so that it holds wherever the built folder is put. */
export const PAGE_POLICY = POLICY.join("; ")

/** For a server: with what only a header may say. */
export const HEADERS: Readonly<Record<string, string>> = {
  "Content-Security-Policy": [...POLICY, "frame-ancestors 'none'"].join("; "),
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
}
