import { preview } from "vite"

/** Serves a folder of built files on a free port, as `npm start` does. */
export async function serveFolder(
  folder: string,
): Promise<{ readonly address: string; readonly close: () => Promise<void> }> {
  const server = await preview({
    root: folder,
    configFile: false,
    logLevel: "error",
    build: { outDir: "." },
    preview: { port: 4373, host: "127.0.0.1" },
  })
  const address = server.resolvedUrls?.local[0]
  if (address === undefined) throw new Error("the preview server gave no address")
  return { address, close: () => server.close() }
}
