import { fileURLToPath } from "node:url"
import { defineConfig, type Plugin } from "vite"
import solid from "vite-plugin-solid"
import { compressedFiles } from "./build/compressed-files.ts"
import { offlineFiles } from "./build/offline-files.ts"
import { HEADERS, PAGE_POLICY } from "./build/policy.ts"

const inHere = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/** Only in what is built: the development server puts its styles in the page, which the policy forbids. */
function contentSecurityPolicy(): Plugin {
  return {
    name: "content-security-policy",
    apply: "build",
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: PAGE_POLICY },
        injectTo: "head-prepend",
      },
    ],
  }
}

/** What is only of the trade says so in its file's name: how much of a first load is the workbook, and how much the program. */
function fileName({ moduleIds }: { readonly moduleIds: readonly string[] }): string {
  const ofTheTrade = moduleIds.every((id) =>
    /[\\/](?:packages[\\/]templates[\\/]src|delaunator|robust-predicates)[\\/]/.test(id),
  )
  return `assets/${ofTheTrade ? "trade-" : ""}[name]-[hash].js`
}

export default defineConfig({
  root: inHere("."),
  // Relative, so that the built folder runs from wherever it is put.
  base: "./",
  plugins: [
    solid(),
    contentSecurityPolicy(),
    offlineFiles(inHere("src/offline/worker.ts"), inHere("public")),
    compressedFiles(HEADERS),
  ],
  // A worker that loads the solver on first need has more files than one.
  worker: { format: "es" },
  // What is not there is not found, rather than answered with the page.
  appType: "mpa",
  preview: { headers: HEADERS },
  build: {
    target: "es2022",
    chunkSizeWarningLimit: 2_000,
    assetsInlineLimit: 0,
    rolldownOptions: { output: { chunkFileNames: fileName } },
  },
})
