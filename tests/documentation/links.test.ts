import { existsSync } from "node:fs"
import { join, posix } from "node:path"
import { expect, test } from "vitest"
import { files, read, root } from "../files.ts"

/** The anchors of a page's headings, as the usual viewers make them. */
function anchors(page: string): string[] {
  return [...page.matchAll(/^#+ (.+)$/gm)].map(([, heading = ""]) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, "")
      .trim()
      .replaceAll(" ", "-"),
  )
}

/** Links of a page that lead nowhere in the project. `exists` and `text` look at the project's files. */
function deadLinks(
  page: string,
  source: string,
  exists: (file: string) => boolean,
  text: (file: string) => string,
): string[] {
  const links = [...source.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target = ""]) => target)
  return links.filter((target) => {
    if (/^[a-z]+:/.test(target)) return false
    const [path = "", anchor] = target.split("#")
    const file = path === "" ? page : posix.join(posix.dirname(page), path)
    if (!exists(file)) return true
    return anchor !== undefined && !anchors(text(file)).includes(anchor)
  })
}

/** Paths in back quotes that name a file or folder of the project and do not exist. */
function deadPaths(source: string, exists: (file: string) => boolean): string[] {
  const paths = [...source.matchAll(/`((?:packages|tests|tools)\/[\w./-]*)`/g)].map(([, path = ""]) => path)
  return paths.filter((path) => !exists(path))
}

const inProject = (file: string): boolean => existsSync(join(root, file))
const pages = files(".", [".md"])

test("there are pages to look at", () => {
  expect(pages).toEqual(expect.arrayContaining(["README.md", "DEVELOPERS.md"]))
})

test.each(pages)("every link and path in %s leads somewhere", (page) => {
  expect(deadLinks(page, read(page), inProject, read)).toEqual([])
  expect(deadPaths(read(page), inProject)).toEqual([])
})

test("a link or path that leads nowhere would be noticed", () => {
  const exists = (file: string): boolean => file === "a/b.md"
  const text = (): string => "# One\n## Two words, three"
  const dead = (source: string): string[] => deadLinks("a/c.md", source, exists, text)
  expect(dead("[x](b.md) [y](b.md#two-words-three) [z](https://example.org/x)")).toEqual([])
  expect(dead("[x](no.md) [y](b.md#four)")).toEqual(["no.md", "b.md#four"])
  expect(deadPaths("`tests/none/here.ts` and `npm test`", exists)).toEqual(["tests/none/here.ts"])
})
