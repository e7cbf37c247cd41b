import axe from "axe-core"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import type { WorkbookPage } from "./workbook-page.ts"

/** What axe-core finds against WCAG 2.2 A and AA and its own best practices, one line for each place. */
async function findings({ page }: WorkbookPage): Promise<readonly string[]> {
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: typeof import("axe-core") }
    const { violations } = await axe.run(document, { resultTypes: ["violations"] })
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, any }) => `${id}: ${html.slice(0, 160)} ${any[0]?.message ?? ""}`),
    )
  })
}

/** Visits each screen; on the worksheet with details open, an entry refused and numbers moved. */
async function everywhere(workbook: WorkbookPage, look: (where: string) => Promise<void>): Promise<void> {
  await workbook.saveCopy("Wider")
  await workbook.enter("platform_length", "19 ft")
  await workbook.enter("platform_width", "wide")
  for (const name of ["platform_length", "joist_count", "supports", "soil_bearing_check"])
    await workbook.open(name)
  for (const screen of await workbook.screens()) {
    await workbook.screen(screen)
    await workbook.page.waitForTimeout(300)
    await look(screen)
  }
}

test.each([
  { width: 1280, dark: false },
  { width: 1280, dark: true },
  { width: 360, dark: false },
  { width: 360, dark: true },
])(
  "axe-core finds nothing on any screen: $width wide, dark $dark",
  async ({ width, dark }) => {
    const workbook = await openPegbook({ width, height: width < 500 ? 740 : 900, dark })
    const found: string[] = []
    await everywhere(workbook, async (where) => {
      for (const one of await findings(workbook)) found.push(`${where}: ${one}`)
    })
    expect(found).toEqual([])

    // And it does find what is there to be found.
    await workbook.screen("Start")
    await workbook.page.evaluate(() => document.querySelector("main")?.append(new Image(9, 9)))
    expect(await findings(workbook)).toEqual([expect.stringMatching(/^image-alt: /)])
  },
  300_000,
)

test("with text at twice its size nothing is cut off sideways", async () => {
  const workbook = await openPegbook({ width: 640, height: 800 })
  await workbook.page.evaluate(() => {
    document.documentElement.style.fontSize = "200%"
  })
  await everywhere(workbook, async (where) => {
    expect(await workbook.overflow(), where).toBeLessThanOrEqual(0)
  })
})
