import axe from "axe-core"
import type { WorkbookPage } from "./workbook-page.ts"

/**
 * What axe-core finds on the screen that is shown against WCAG 2.2 A and AA and its own best practices, one line for each
 * place; the size of targets, which it leaves out, is measured in reach.test.ts. Of the hundreds of rows that are alike a few
 * of each section are looked at, on the worksheet alone, and the others are out of the page meanwhile: axe-core weighs what
 * is hidden as well, and the search takes minutes otherwise.
 */
export async function findings({ page }: WorkbookPage): Promise<readonly string[]> {
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: typeof import("axe-core") }
    const rows = document.querySelectorAll("[hidden] .row, .row:not(.row-open):nth-child(n + 4)")
    const out = [...rows].map((row) => ({ row, place: document.createComment("") }))
    for (const { row, place } of out) row.replaceWith(place)
    const { violations } = await axe.run(document, { resultTypes: ["violations"] })
    for (const { row, place } of out) place.replaceWith(row)
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, any }) => `${id}: ${html.slice(0, 160)} ${any[0]?.message ?? ""}`),
    )
  })
}
