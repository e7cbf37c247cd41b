import { type Browser, type BrowserContext, chromium } from "playwright-core"
import { afterAll, expect, inject, onTestFinished } from "vitest"
import { LAUNCH_ARGS } from "./launch.ts"
import { WorkbookPage } from "./workbook-page.ts"

declare module "vitest" {
  export interface ProvidedContext {
    address: string
    chromium: string
  }
}

export interface Opening {
  readonly width?: number
  readonly height?: number
  /** Pixels of a screenshot for each of the page's. */
  readonly pixelRatio?: number
  /** Runs in the page before anything of its own. */
  readonly before?: () => void
  /** Where it is served, if not where all journeys go. */
  readonly address?: string
  readonly dark?: boolean
  /** A screen that is touched, as a phone's. */
  readonly touch?: boolean
  /**
   * Whether better plans are looked for. Not unless a journey is about them: the search takes a core for as long as the page
   * is open, and journeys run side by side.
   */
  readonly proofs?: boolean
  /** Whether the page keeps its files for use without a network: a second of a core for each page. Not unless a journey is about it. */
  readonly offline?: boolean
  /** Whether the page may ask for files that it does not get. */
  readonly missing?: boolean
  /** What the browser says that its reader reads. Default: the browser's own. */
  readonly locale?: string
}

/** One for all journeys of a file; each has a profile of its own in it. */
let browser: Promise<Browser> | undefined
afterAll(async () => (await browser)?.close())

/**
 * Opens Pegbook in a browser with an empty profile. When the test ends the profile goes, and the test fails
 * if the page complained on the console or asked any other address for anything.
 */
export async function openPegbook(opening: Opening = {}): Promise<WorkbookPage> {
  const { width = 1280, height = 900, before, address = inject("address"), dark = false } = opening
  const { pixelRatio, locale, touch = false, proofs = false, offline = false, missing = false } = opening
  browser ??= chromium.launch({ executablePath: inject("chromium"), args: [...LAUNCH_ARGS] })
  const context = await (await browser).newContext({
    viewport: { width, height },
    colorScheme: dark ? "dark" : "light",
    hasTouch: touch,
    isMobile: touch,
    ...(pixelRatio === undefined ? {} : { deviceScaleFactor: pixelRatio }),
    ...(locale === undefined ? {} : { locale }),
  })
  const complaints = listen(context, address)
  onTestFinished(async () => {
    await context.close()
    const kept = complaints.filter((one) => !missing || !one.startsWith("Failed to load resource:"))
    expect(kept, "what the page complained of, or asked of others").toEqual([])
  })
  context.setDefaultTimeout(15_000)
  // Before the scripts, which are for Pegbook and not for the blank page.
  const page = await context.newPage()
  if (!proofs) await context.addInitScript(withoutProver)
  if (!offline) await context.addInitScript(withoutOffline)
  if (before !== undefined) await context.addInitScript(before)

  await page.goto(address)
  const workbook = new WorkbookPage(page)
  await workbook.ready()
  return workbook
}

/** In the page: a prover that is asked and does not answer, as one that takes long. */
function withoutProver(): void {
  const RealWorker = window.Worker
  class SilentWorker extends EventTarget {
    postMessage(): void {}
    terminate(): void {}
  }
  window.Worker = new Proxy(RealWorker, {
    construct: (target, given: ConstructorParameters<typeof Worker>) =>
      given[1]?.name === "prover" ? new SilentWorker() : new target(...given),
  })
}

/** In the page: a browser that keeps no files for pages. */
function withoutOffline(): void {
  Reflect.deleteProperty(Navigator.prototype, "serviceWorker")
}

/** Errors on the console, uncaught ones, and requests to anywhere but the address served. */
function listen(context: BrowserContext, address: string): readonly string[] {
  const complaints: string[] = []
  const { origin } = new URL(address)
  context.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text())
  })
  context.on("weberror", (error) => complaints.push(String(error.error())))
  context.on("request", (request) => {
    const url = new URL(request.url())
    const ours = url.origin === origin || url.protocol === "data:" || url.protocol === "blob:"
    if (!ours) complaints.push(`a request to ${url.href}`)
  })
  return complaints
}
