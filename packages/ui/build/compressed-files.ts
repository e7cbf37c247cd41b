import { readdirSync } from "node:fs"
import { readFile, writeFile } from "node:fs/promises"
import { join } from "node:path"
import { promisify } from "node:util"
import { brotliCompress, constants } from "node:zlib"
import sirv from "sirv"
import type { Plugin } from "vite"

const compress = promisify(brotliCompress)

const TEXTS = /\.(?:js|css|html|svg|json|webmanifest|wasm)$/
/** What is larger is packed less tightly: it would take longer than all others together. */
const LARGE = 1_000_000

/**
 * Packs what is built as tightly as browsers can read it (Brotli), once, and serves that to whoever takes it; all others
 * are served as before. `headers`: for every answer.
 */
export function compressedFiles(headers: Readonly<Record<string, string>>): Plugin {
  let folder = ""
  return {
    name: "compressed-files",
    configResolved({ root, build }) {
      folder = join(root, build.outDir)
    },
    async closeBundle() {
      if (this.meta.watchMode) return
      const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
        TEXTS.test(name),
      )
      await Promise.all(
        files.map(async (name) => {
          const whole = await readFile(join(folder, name))
          const quality = whole.length > LARGE ? 7 : constants.BROTLI_MAX_QUALITY
          const params = { [constants.BROTLI_PARAM_QUALITY]: quality }
          await writeFile(join(folder, `${name}.br`), await compress(whole, { params }))
        }),
      )
    },
    configurePreviewServer({ middlewares }) {
      const packed = sirv(folder, {
        brotli: true,
        dev: true,
        etag: true,
        extensions: [],
        setHeaders(response) {
          for (const [name, value] of Object.entries(headers)) response.setHeader(name, value)
          response.setHeader("Vary", "Accept-Encoding")
        },
      })
      middlewares.use((request, response, next) => {
        const takes = String(request.headers["accept-encoding"] ?? "").split(/\s*,\s*/)
        if (takes.includes("br")) packed(request, response, next)
        else next()
      })
    },
  }
}
