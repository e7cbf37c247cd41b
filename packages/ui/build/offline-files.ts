import { createHash } from "node:crypto"
import { readdirSync, readFileSync } from "node:fs"
import { join, relative, sep } from "node:path"
import type { Plugin } from "vite"

/**
 * Builds the worker that keeps the page's files for use without a network, and writes into it which files those are
 * and a mark that is another one as soon as any of them is.
 */
export function offlineFiles(worker: string, publicFolder: string): Plugin {
  return {
    name: "offline-files",
    apply: "build",
    buildStart() {
      // In the root of what is built: a worker answers for its own folder and what is below.
      this.emitFile({ type: "chunk", id: worker, fileName: "offline.js" })
    },
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const chunk = bundle["offline.js"]
        if (chunk?.type !== "chunk") throw new Error("the offline worker was not built")
        if (chunk.imports.length > 0) throw new Error("the offline worker must be one file of its own")
        const own = readdirSync(publicFolder, { recursive: true, withFileTypes: true })
          .filter((item) => item.isFile())
          .map((item) => relative(publicFolder, join(item.parentPath, item.name)).split(sep).join("/"))
          .sort()
        const hash = createHash("sha256").update(chunk.code)
        for (const name of own) hash.update(name).update(readFileSync(join(publicFolder, name)))
        const built: string[] = []
        for (const [name, file] of Object.entries(bundle)) {
          if (file === chunk) continue
          built.push(name)
          hash.update(name).update(file.type === "chunk" ? file.code : file.source)
        }
        const files = [...built, ...own].sort()
        chunk.code = chunk.code
          .replace("__FILES__", JSON.stringify(files))
          .replace("__BUILT__", JSON.stringify(hash.digest("hex").slice(0, 16)))
      },
    },
  }
}
