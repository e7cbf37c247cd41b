import { TEMPLATES } from "@pegbook/templates"
import type { Page } from "playwright-core"
import { PNG } from "pngjs"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { differs, References } from "./reference.ts"
import type { WorkbookPage } from "./workbook-page.ts"

/** Half of each pixel is enough to see every line at the wide size. */
const SIZES = [
  { width: 1280, height: 900, pixelRatio: 0.5 },
  { width: 360, height: 780, pixelRatio: 1 },
] as const

/**
 * The drawing alone in a corner of the window, so that nothing round it can move it, with a box for each label:
 * where labels stand is worked out, how their letters look is the machine's.
 */
async function picture(page: Page): Promise<Buffer> {
  const size = await page.evaluate(() => {
    const svg = document.querySelector<SVGSVGElement>("svg[data-drawn]")
    if (svg === null) throw new Error("nothing is drawn")
    const alone = svg.cloneNode(true) as SVGSVGElement
    for (const label of alone.querySelectorAll("text")) {
      const box = document.createElementNS("http://www.w3.org/2000/svg", "rect")
      const wide = (label.textContent ?? "").length * 7
      box.setAttribute("x", String(Number(label.getAttribute("x")) - wide / 2))
      box.setAttribute("y", String(Number(label.getAttribute("y")) - 5))
      box.setAttribute("width", String(wide))
      box.setAttribute("height", "10")
      const turn = label.getAttribute("transform")
      if (turn !== null) box.setAttribute("transform", turn)
      box.style.fill = "#888"
      label.replaceWith(box)
    }
    const sheet = document.createElement("div")
    sheet.id = "drawing-alone"
    Object.assign(sheet.style, { position: "fixed", inset: "0", background: "#fff", zIndex: "1000" })
    sheet.append(alone)
    document.body.append(sheet)
    return { width: svg.width.baseVal.value, height: svg.height.baseVal.value }
  })
  const taken = await page.screenshot({ clip: { x: 0, y: 0, ...size }, animations: "disabled" })
  await page.evaluate(() => document.getElementById("drawing-alone")?.remove())
  return taken
}

/** Pairs of labels that overlap as this browser sets their letters, by more than a hair. */
function labelsInTheWay(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const labels = [...document.querySelectorAll<SVGTextElement>("svg[data-drawn] text")]
      .map((label) => ({ text: label.textContent, box: label.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0)
    const meet = (a: DOMRect, b: DOMRect) =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1
    return labels.flatMap((one, at) =>
      labels
        .slice(at + 1)
        .filter((other) => meet(one.box, other.box))
        .map((other) => `${one.text} over ${other.text}`),
    )
  })
}

async function choose(page: Page, title: string): Promise<void> {
  const wide = page.getByRole("button", { name: title, exact: true })
  const narrow = page.getByRole("combobox", { name: "Drawing" })
  await wide.or(narrow).first().waitFor()
  if (await wide.isVisible()) await wide.click()
  else await narrow.selectOption({ label: title })
}

/** All layers of the drawing shown, also those that start hidden. */
async function allLayers(workbook: WorkbookPage): Promise<void> {
  for (const layer of await workbook.page.locator("[data-layer-switch]").all()) await layer.check()
}

for (const size of SIZES) {
  test(`every drawing of every workbook looks as it did, ${size.width} wide`, async () => {
    const workbook = await openPegbook(size)
    const { page } = workbook
    const references = new References(`${size.width}-`)
    const drawn = TEMPLATES.filter(({ drawings }) => drawings !== undefined)
    for (const { id, title, drawings = [] } of drawn) {
      await workbook.start(title)
      await workbook.screen("Drawings")
      for (const drawing of drawings) {
        await choose(page, drawing.title)
        const empty = page.locator(".drawing-empty")
        await page.locator(`svg[data-drawn="${drawing.id}"]`).or(empty).first().waitFor()
        if (await empty.isVisible()) continue
        expect(await labelsInTheWay(page), `${id}: ${drawing.id}`).toEqual([])
        references.compare(`${id}-${drawing.id}`, await picture(page))
        if (drawing.id !== "plan") continue
        await allLayers(workbook)
        references.compare(`${id}-plan-all-layers`, await picture(page))
      }
    }
    expect(references.complaints()).toEqual([])
  })
}

test("a guard on all sides looks as it did, in the plan and from a side", async () => {
  const workbook = await openPegbook(SIZES[0])
  const { page } = workbook
  const references = new References("guard-")
  const deck = TEMPLATES.find(({ id }) => id === "ground-level-deck") ?? expect.fail("no deck")
  await workbook.start(deck.title)
  await workbook.row("guard_where").getByRole("combobox").selectOption("on all sides")
  await workbook.screen("Drawings")
  for (const id of ["plan", "side-1"]) {
    const drawing = deck.drawings?.find((one) => one.id === id) ?? expect.fail(`no ${id}`)
    await choose(page, drawing.title)
    await page.locator(`svg[data-drawn="${id}"] [data-layer="guards"] [data-of]`).first().waitFor()
    references.compare(id, await picture(page))
  }
  expect(references.complaints()).toEqual([])
})

test("a layer that is missing, and a joist that stands elsewhere, are seen", async () => {
  const workbook = await openPegbook(SIZES[0])
  const { page } = workbook
  await workbook.screen("Drawings")
  await page.locator('svg[data-drawn="plan"]').waitFor()
  const seen = async () => PNG.sync.read(await picture(page))
  const whole = await seen()
  expect(differs(whole, await seen())).toBe(false)
  await page.getByRole("checkbox", { name: "Joists" }).uncheck()
  expect(differs(whole, await seen())).toBe(true)
  await page.getByRole("checkbox", { name: "Joists" }).check()
  await page.locator('svg[data-drawn] [data-of="joists#3"]').evaluate((joist) => {
    joist.setAttribute("transform", "translate(0.1 0)")
  })
  expect(differs(whole, await seen())).toBe(true)
})
