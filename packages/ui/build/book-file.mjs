// The build book as one file: the screen's own components, rendered without a browser.
import { fileURLToPath } from "node:url"
import { createServer } from "vite"
import solid from "vite-plugin-solid"

const ui = fileURLToPath(new URL("..", import.meta.url))
const POLICY = "default-src 'none'; style-src 'unsafe-inline'"

const escaped = (text) =>
  text.replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign])

/**
 * @param {import("@pegbook/engine").Book} book
 * @param {string} title
 * @param {"a4" | "letter" | undefined} paper
 * @param {import("@pegbook/engine").LanguageId} language Of the workbook and of the page.
 * @returns {Promise<string>} One page of HTML that asks for no other file and runs no code.
 */
export async function bookFile(book, title, paper, language) {
  const server = await createServer({
    root: ui,
    configFile: false,
    logLevel: "error",
    appType: "custom",
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true, include: [] },
    // As the command has them loaded: read and transformed again they took a third of the time.
    ssr: { external: ["@pegbook/engine", "@pegbook/templates"] },
    plugins: [solid({ ssr: true, solid: { hydratable: false }, hot: false })],
  })
  try {
    const { bookPage } = await server.ssrLoadModule("/src/screens/build-book/book-file.tsx")
    const page = await bookPage(book, title, paper, language)
    const styles = []
    for (const id of server.environments.ssr.moduleGraph.idToModuleMap.keys()) {
      if (id.endsWith(".css")) styles.push((await server.ssrLoadModule(`${id}?inline`)).default)
    }
    return [
      "<!doctype html>",
      `<html lang="${page.lang}">`,
      "<head>",
      '<meta charset="utf-8">',
      '<meta name="viewport" content="width=device-width, initial-scale=1">',
      `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
      `<title>${escaped(page.title)}</title>`,
      `<style>${styles.join("\n")}</style>`,
      "</head>",
      `<body>${page.body}</body>`,
      "</html>",
    ].join("\n")
  } finally {
    await server.close()
  }
}
