// Draws the icons of packages/ui/public from its icon.svg: `node tools/icons.mjs`, after the drawing has changed.
import { readFileSync, writeFileSync } from "node:fs"
import { createRequire } from "node:module"
import { join } from "node:path"
import { findChromium, HOW_TO_GET_ONE } from "./chromium.mjs"
import { giveUp, root } from "./setup.mjs"

const { chromium } = createRequire(join(root, "tests", "package.json"))("playwright-core")
const folder = join(root, "packages", "ui", "public")
const drawing = readFileSync(join(folder, "icon.svg"), "utf8")

// Systems cut a maskable icon to a shape of theirs: its ground is whole, and the drawing keeps to the middle.
const maskable = drawing.replace(/ rx="\d+"/, "").replace('viewBox="0 0 32 32"', 'viewBox="-5 -5 42 42"')

const ICONS = [
  { name: "icon-180.png", size: 180, svg: drawing.replace(/ rx="\d+"/, "") },
  { name: "icon-192.png", size: 192, svg: drawing },
  { name: "icon-512.png", size: 512, svg: drawing },
  { name: "icon-512-maskable.png", size: 512, svg: maskable },
]

const executablePath = findChromium() ?? giveUp(HOW_TO_GET_ONE)
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] })
const page = await browser.newPage()
for (const { name, size, svg } of ICONS) {
  await page.setViewportSize({ width: size, height: size })
  const ground = svg === maskable ? "#f6f0e2" : "transparent"
  await page.setContent(
    `<style>html{background:${ground}}body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`,
  )
  writeFileSync(join(folder, name), await page.screenshot({ omitBackground: true }))
}
await browser.close()
