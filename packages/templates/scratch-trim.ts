import { existsSync, readFileSync, writeFileSync } from "node:fs"
import { openBook } from "@pegbook/engine"
import { TEMPLATES } from "./src/index.ts"

const mode = process.argv[2]
const snap: Record<string, Record<string, unknown>> = {}
for (const d of TEMPLATES) {
  const { book, problems } = openBook(d)
  const all = d.sections.flatMap((s) => s.entries)
  const verdicts = all
    .filter((e) => e.kind === "check")
    .map((e) => [e.name, book.entry(e.name).check?.verdict])
  console.log(
    d.id,
    all.length,
    "problems",
    problems.length,
    book.problems().length,
    "fails",
    verdicts
      .filter(([, v]) => v !== "passes" && v !== "near" && v !== "waits")
      .map((x) => x.join(":"))
      .join(" "),
  )
  for (const p of [...problems, ...book.problems()].slice(0, 5)) console.log(JSON.stringify(p).slice(0, 400))
  const values: Record<string, unknown> = {}
  const read = (b: typeof book, tag: string) => {
    for (const n of b.names()) {
      const v = b.entry(n)
      values[tag + n] = (v.readings ?? [v.reading ?? null]).map((r: any) => r?.value ?? null)
      if (v.check) values[tag + n + "?"] = [v.check.verdict, ...v.check.advice]
    }
  }
  read(book, "")
  // A second state: surveyed levels, limits entered, a longer platform
  book.editTable("ground_levels", [
    { x: "0 ft", y: "0 ft", level: "0 in" },
    { x: "20 ft", y: "0 ft", level: "-7 in" },
    { x: "0 ft", y: "8 ft", level: "-2 in" },
    { x: "20 ft", y: "8 ft", level: "-8.5 in" },
    { x: "10 ft", y: "4 ft", level: "-6 in" },
  ])
  for (const [n, t] of Object.entries({
    area_limit: "100 ft2",
    height_limit: "20 in",
    guard_height_limit: "24 in",
    guard_slope_limit: "1/4",
    frost_depth: "40 in",
    frost_area_limit: "600 ft2",
    frost_height_limit: "600 mm",
    platform_length: "23 ft",
    fall_away_measured: "3 in",
    door_end: "low end",
    access_low_end: "ramp",
    stone_formation: "level",
    formation_depth: "3 in",
    blocks_per_course: "2",
    edge_board_sides: "1",
    boundary_distance: "3 ft",
    boundary_distance_least: "5 ft",
  }))
    if (book.has(n)) book.edit(n, t)
  read(book, "2:")
  snap[d.id] = values
  if (mode === "count") for (const s of d.sections) console.log("   ", s.id, s.entries.length)
}
const file = "/tmp/trim-base.json"
if (mode === "save") writeFileSync(file, JSON.stringify(snap))
else if (existsSync(file)) {
  const base = JSON.parse(readFileSync(file, "utf8"))
  for (const id of Object.keys(snap)) {
    const gone: string[] = [],
      added: string[] = [],
      moved: string[] = []
    for (const [n, v] of Object.entries(base[id] as Record<string, any[]>)) {
      const w = snap[id]?.[n] as any[] | undefined
      if (w === undefined) {
        if (!n.startsWith("2:")) gone.push(n)
        continue
      }
      const same =
        v.length === w.length &&
        v.every((x, i) =>
          typeof x === "number" && typeof w[i] === "number"
            ? Math.abs(x - w[i]) <= 1e-9 * Math.max(Math.abs(x), 1e-6)
            : x === w[i],
        )
      if (!same) moved.push(`${n}: ${JSON.stringify(v).slice(0, 150)} -> ${JSON.stringify(w).slice(0, 150)}`)
    }
    if (mode === "diff")
      console.log(
        id,
        "gone",
        gone.length,
        mode === "diff" && process.argv[3] ? gone.join(" ") : "",
        "\n  MOVED",
        moved.slice(0, 15).join("\n  "),
      )
    else if (moved.length) console.log(id, "MOVED", moved.slice(0, 15).join("\n  "))
  }
}
