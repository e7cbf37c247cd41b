import type { Locator, Page } from "playwright-core"
import { expect } from "vitest"

/** The worksheet as a person meets it: rows found by an entry's name, everything else by its role and words. */
export class WorkbookPage {
  constructor(readonly page: Page) {}

  /** Resolves when the numbers are there. */
  async ready(): Promise<void> {
    await this.row("platform_length").waitFor()
  }

  /** Resolves when all that follows a change has followed: what is out of sight does so after what is in sight. */
  async settled(): Promise<void> {
    await this.page.locator("main:not([aria-busy])").waitFor()
  }

  /** An entry's row; for a column, its part of the table. */
  row(name: string): Locator {
    return this.page.locator(`[data-entry="${name}"]`).first()
  }

  /** The value shown, with its unit. */
  async value(name: string): Promise<string> {
    await this.settled()
    return (await this.row(name).locator("[data-value]").first().getAttribute("data-value")) ?? ""
  }

  async values(names: readonly string[]): Promise<Readonly<Record<string, string>>> {
    const found: Record<string, string> = {}
    for (const name of names) found[name] = await this.value(name)
    return found
  }

  /** What the row says that the value was before the last change; undefined when it did not move. */
  async was(name: string): Promise<string | undefined> {
    await this.settled()
    const shown = this.row(name).locator("[data-was]").first()
    return (await shown.count()) === 0 ? undefined : ((await shown.getAttribute("data-was")) ?? "")
  }

  /** How many numbers the page announces to have moved. */
  async movedCount(): Promise<number> {
    await this.settled()
    return Number(await this.page.locator("[data-moved-count]").first().getAttribute("data-moved-count"))
  }

  field(name: string): Locator {
    return this.row(name).getByRole("textbox").first()
  }

  /** Types a value as a person does: choose the field, type over what is there, press Enter. */
  async enter(name: string, text: string): Promise<void> {
    const field = this.field(name)
    await this.press(field)
    await field.fill(text)
    await field.press("Enter")
    await this.settled()
  }

  /** What the page says of the entry in the field, while it cannot be used. */
  async complaint(name: string): Promise<string> {
    return (await this.row(name).getByRole("alert").first().textContent()) ?? ""
  }

  /**
   * Presses what may be far away, once it stands still: rows that had not been laid out get their height when they come in
   * sight, and those below them move once more.
   */
  async press(place: Locator): Promise<void> {
    await place.scrollIntoViewIfNeeded()
    await this.twoFrames()
    await place.click()
  }

  /** Until what was changed before has been laid out and painted, and what that brought about too. */
  async twoFrames(): Promise<void> {
    await this.page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    )
  }

  /** Opens an entry's details, unless they are open. */
  async open(name: string): Promise<void> {
    const toggle = this.row(name).locator("[data-open]").first()
    if ((await toggle.getAttribute("aria-expanded")) !== "true") await this.press(toggle)
    expect(await toggle.getAttribute("aria-expanded")).toBe("true")
  }

  /** Presses the way from one entry to another that its details show, and arrives there. */
  async walk(from: string, to: string): Promise<void> {
    const link = this.row(from.split(".")[0] ?? from).locator(`a[href="#/worksheet/${to}"]`)
    await this.press(link.first())
    await this.page.waitForURL((url) => url.hash === `#/worksheet/${to}`)
    await this.row(to).waitFor()
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole("button", { name })
  }

  /** Opens what a narrow window folds away: the scenarios, the units. */
  async unfold(): Promise<void> {
    const fold = this.button(/^Scenario: .*; units, saving$/)
    if ((await fold.isVisible()) && (await fold.getAttribute("aria-expanded")) === "false") await fold.click()
  }

  async saveCopy(title: string): Promise<void> {
    await this.unfold()
    await this.button("Save a copy").click()
    await this.page.getByRole("textbox", { name: "Name of the copy" }).fill(title)
    await this.page.getByRole("button", { name: "Save", exact: true }).click()
    await this.page.getByText(`“${title}”`).first().waitFor()
  }

  /** The titles of all scenarios. */
  async scenarios(): Promise<readonly string[]> {
    return this.page.getByRole("combobox", { name: "Scenario" }).first().locator("option").allInnerTexts()
  }

  async showIn(system: "Feet and inches" | "Metric"): Promise<void> {
    await this.page.getByRole("group", { name: "Shown in" }).getByText(system, { exact: true }).click()
  }

  /** The names of all screens. */
  async screens(): Promise<readonly string[]> {
    return this.page.getByRole("navigation", { name: "Screens" }).getByRole("link").allInnerTexts()
  }

  /** Goes to a screen, by its name in the language of the page, and waits until it is there: most are fetched when first asked for. */
  async screen(name: string): Promise<void> {
    const screens = this.page.locator("nav.screens")
    await screens.getByText(name, { exact: true }).click()
    await screens.locator('a[aria-current="page"]', { hasText: new RegExp(`^${name}$`) }).waitFor()
    await this.page.locator("main [data-opening]:visible").first().waitFor({ state: "hidden" })
  }

  /** An entry's values in the two scenarios that are compared. */
  async compared(name: string): Promise<readonly (string | null)[]> {
    const line = this.page.locator(`[data-difference="${name}"]`)
    return Promise.all([0, 1].map((side) => line.locator(`[data-side="${side}"] [data-says]`).textContent()))
  }

  /** How many numbers the page says aloud that the last change moved. */
  async movedAloud(): Promise<number> {
    await this.settled()
    const said = this.page.getByRole("status").filter({ hasText: /numbers? moved/ })
    return Number(
      /([\d,]+) numbers? moved/.exec((await said.first().textContent()) ?? "")?.[1]?.replace(",", ""),
    )
  }

  /** Starts a workbook of this kind on the screen where they are chosen. */
  async start(title: string): Promise<void> {
    await this.screen("Start")
    await this.page.getByRole("button", { name: `Start this one: ${title}`, exact: true }).click()
    await this.page.getByRole("heading", { level: 1, name: title }).waitFor()
  }

  /** A workbook's line in the list of those kept. */
  listed(title: string): Locator {
    return this.page
      .getByRole("list", { name: "Your workbooks" })
      .getByRole("listitem", { name: title, exact: true })
  }

  /** Waits until the page says that everything is kept. */
  async saved(): Promise<void> {
    await this.page.getByText("Saved in this browser").first().waitFor()
  }

  /** Reloads, as after closing the page and coming back. */
  async reload(): Promise<void> {
    await this.page.reload()
    await this.ready()
  }

  /** By how much the page is wider than the window, in CSS pixels. */
  async overflow(): Promise<number> {
    return this.page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    )
  }

  /** What the keyboard is at. */
  focused(): Locator {
    return this.page.locator(":focus")
  }
}
