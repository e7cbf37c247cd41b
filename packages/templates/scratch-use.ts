import { execSync } from "node:child_process"
import { readFileSync } from "node:fs"
import { openBook } from "@pegbook/engine"
import { TEMPLATES } from "./src/index.ts"

const glossary = readFileSync("/work/shared/glossary.md", "utf8")
const used = new Map<string, Set<string>>(),
  sec = new Map<string, string>(),
  kind = new Map<string, string>()
for (const d of TEMPLATES) {
  const { book } = openBook(d)
  const words = d.sections
    .flatMap((s) => s.entries)
    .map((e) =>
      JSON.stringify({
        ...e,
        name: "",
        rows: e.kind === "table" ? (e.rows.kind === "solved" ? e.rows.from : e.rows) : 0,
      }),
    )
  for (const s of d.sections)
    for (const e of s.entries) {
      sec.set(e.name, s.id)
      kind.set(e.name, e.kind)
      const set = used.get(e.name) ?? new Set()
      used.set(e.name, set)
      for (const n of book.leanedOnBy(e.name)) if (n.split(".")[0] !== e.name) set.add(n)
      if (words.some((w) => w.includes(`{${e.name}}`))) set.add("{advice}")
    }
}
const order = [...new Set(sec.values())]
for (const s of order) {
  console.log("##", s)
  for (const [n, ss] of sec)
    if (ss === s) {
      const u = [...(used.get(n) ?? [])]
      let files = ""
      try {
        files = execSync(
          `grep -rlw --include=*.ts --include=*.tsx --include=*.md --include=*.json --include=*.mjs -e '${n}' /work/next/packages/*/test /work/next/packages/ui/src /work/next/packages/engine/src /work/next/tests /work/next/docs /work/next/README.md /work/next/tools /work/next/packages/templates/src/command 2>/dev/null`,
        )
          .toString()
          .trim()
          .split("\n")
          .map((f) => f.replace("/work/next/", "").replace("packages/", "").replace("templates/test", "t"))
          .join(",")
      } catch {}
      console.log(
        ` ${n} [${kind.get(n)?.slice(0, 3)}]${new RegExp(`\\b${n}\\b`).test(glossary) ? " GLOSS" : ""} <- ${u.slice(0, 4).join(",")}${u.length > 4 ? "…" : ""} | ${files}`,
      )
    }
}
