import { fileURLToPath } from "node:url"
import { defineConfig, type Plugin } from "vite"
import solid from "vite-plugin-solid"

const POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
].join("; ")

/** Only in what is built: the development server puts its styles in the page, which the policy forbids. */
function contentSecurityPolicy(): Plugin {
  return {
    name: "content-security-policy",
    apply: "build",
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: POLICY },
        injectTo: "head-prepend",
      },
    ],
  }
}

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  // Relative, so that the built folder runs from wherever it is put.
  base: "./",
  plugins: [solid(), contentSecurityPolicy()],
  build: { target: "es2022", chunkSizeWarningLimit: 2_000, assetsInlineLimit: 0 },
})
