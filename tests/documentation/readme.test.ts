import { expect, test } from "vitest"
import { read } from "../files.ts"
import { matches, runShown, shownCommands, words } from "./console.ts"

const shown = ["README.md", "DEVELOPERS.md"].flatMap((page) => shownCommands(read(page)))

test("the pages show commands", () => {
  expect(shown.length).toBeGreaterThanOrEqual(4)
})

test.each(shown)("$command prints what the page says", ({ command, says }) => {
  const { status, lines } = runShown(command)
  expect(status, lines.join("\n")).toBe(0)
  expect(matches(says, lines), `the page says:\n${says.join("\n")}\n\nprinted:\n${lines.join("\n")}`).toBe(
    true,
  )
})

test("a command that prints something else would be noticed", () => {
  const [command] = shownCommands('```console\n$ a --b "c d"\none\n…\nlast\n```')
  expect(command).toEqual({ command: 'a --b "c d"', says: ["one", "…", "last"] })
  expect(words('a --b="c d"')).toEqual(["a", "--b=c d"])
  expect(matches(["one", "…", "last"], ["one", "two", "three", "last"])).toBe(true)
  expect(matches(["one", "…", "last"], ["one", "last", "more"])).toBe(false)
  expect(matches(["one"], ["two"])).toBe(false)
  expect(matches(["one  two …"], ["one     two three"])).toBe(true)
  expect(matches(["one  two …"], ["one     three"])).toBe(false)
  expect(matches([], ["two"])).toBe(false)
})

test("the npm commands that the pages name are scripts of the project", () => {
  const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> }
  const named = ["README.md", "DEVELOPERS.md"].flatMap((page) =>
    [...read(page).matchAll(/\bnpm (?:run (?:--silent )?)?([a-z]+)\b/g)].map(([, name = ""]) => name),
  )
  expect(named.length).toBeGreaterThan(3)
  expect(named.filter((name) => !(name in scripts))).toEqual([])
})
