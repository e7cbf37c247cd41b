import { type Book, type DrawnArea, type DrawnLine, openBook, resolveDrawing } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

const NETTED = TEMPLATES.filter((template) => openBook(template).book.has("net_posts"))

const metres = (book: Book, name: string, row?: number): number => {
  const { reading, readings } = book.entry(name)
  return Number((row === undefined ? reading : readings?.[row - 1])?.value)
}

/** The posts of a drawing by their rows: how far across the page, from where to where; and the concrete round their feet. */
function postsIn(book: Book, id: string) {
  const drawing = book.definition.drawings?.find((one) => one.id === id) ?? expect.fail(`no drawing ${id}`)
  const { shapes } = resolveDrawing(drawing, book)
  const lines = shapes.filter((one): one is DrawnLine => one.kind === "line" && one.layer === "posts")
  const concrete = shapes.filter((one): one is DrawnArea => one.kind === "area" && one.layer === "footings")
  const row = ({ of }: DrawnLine | DrawnArea) => of.row ?? expect.fail("a post of no row")
  const range = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const
  return {
    posts: new Map(
      lines.map((line) => [
        row(line),
        { u: line.points[0]?.u ?? Number.NaN, v: range(line.points.map(({ v }) => v)) },
      ]),
    ),
    feet: new Map(
      concrete.map((area) => [
        row(area),
        { u: range(area.points.map(({ u }) => u)), v: range(area.points.map(({ v }) => v)) },
      ]),
    ),
    nets: shapes.filter((one) => one.layer === "net").length,
  }
}

describe.each(NETTED.map((template) => [template.id, template] as const))("%s", (_, template) => {
  const { book } = openBook(template)
  const rows = Array.from({ length: book.table("net_posts").rowCount }, (__, index) => index + 1)
  const at = (row: number) => ({
    x: metres(book, "net_posts.x", row),
    y: metres(book, "net_posts.y", row),
  })
  const [long, wide] = [metres(book, "platform_length"), metres(book, "platform_width")]

  /** On an even slope the ground at a place lies between that of the corners, by how far along and across it is. */
  function groundAt(row: number): number {
    const { x, y } = at(row)
    const corner = (number: number) => metres(book, "corners.ground", number)
    return corner(1) + ((corner(2) - corner(1)) * x) / long + ((corner(4) - corner(1)) * y) / wide
  }

  test.each([1, 2, 3, 4])("from side %i every post goes as deep below its own ground as its hole", (side) => {
    const { posts, feet } = postsIn(book, `side-${side}`)
    expect([...posts.keys()].sort((a, b) => a - b)).toEqual(rows)
    expect([...feet.keys()].sort((a, b) => a - b)).toEqual(rows)
    const depth = metres(book, "net_order.hole_depth", 1)
    expect(depth).toBeGreaterThan(0.2)
    for (const row of rows) {
      const [foot, head] = posts.get(row)?.v ?? expect.fail(`no post ${row}`)
      expect(foot, `post ${row}`).toBeCloseTo(groundAt(row) - depth, 9)
      expect(head).toBeCloseTo(metres(book, "top_level") + metres(book, "net_height"), 9)
      const { u, v } = feet.get(row) ?? expect.fail(`no concrete ${row}`)
      expect(v[0]).toBeCloseTo(foot, 9)
      expect(v[1]).toBeCloseTo(groundAt(row), 9)
      expect((u[0] + u[1]) / 2).toBeCloseTo(posts.get(row)?.u ?? Number.NaN, 9)
      expect(u[1] - u[0]).toBeCloseTo(metres(book, "net_wind_factors.hole_width", 1), 9)
    }
    // The lawn falls: the feet do not stand at one level.
    expect(new Set([...posts.values()].map(({ v }) => v[0].toFixed(6))).size).toBeGreaterThan(2)
  })

  test("sections show the posts beyond the cut, each where its row says; whole, or behind the platform from its surface up", () => {
    const { book: both } = openBook(template)
    expect(both.editAll({ net_ends: "2", net_sides: "2" }).problems).toEqual([])
    const depth = metres(both, "net_order.hole_depth", 1)
    const place = (row: number, axis: "x" | "y") => metres(both, `net_posts.${axis}`, row)
    const all = Array.from({ length: both.table("net_posts").rowCount }, (__, index) => index + 1)
    for (const [id, across, beyond, whole] of [
      // Cut through the first line and seen from the first long side: nothing at y = 0 is beyond it.
      [
        "section-along",
        "x",
        (row: number) => place(row, "y") > 0 && (isEnd(row) || place(row, "y") > wide - 1e-6),
        isEnd,
      ],
      // Cut near the first end and seen from the far one: only what is at x = 0 is beyond it.
      [
        "section-across",
        "y",
        (row: number) => place(row, "x") < 1e-6,
        (row: number) => place(row, "y") < 1e-6 || place(row, "y") > wide - 1e-6,
      ],
    ] as const) {
      const { posts, feet, nets } = postsIn(both, id)
      const wanted = all.filter(beyond)
      expect(wanted.length, id).toBeGreaterThan(2)
      expect(
        [...posts.keys()].sort((a, b) => a - b),
        id,
      ).toEqual(wanted)
      expect(
        [...feet.keys()].sort((a, b) => a - b),
        id,
      ).toEqual(wanted.filter(whole))
      expect(nets, id).toBe(1)
      for (const row of wanted) {
        const post = posts.get(row) ?? expect.fail(`no post ${row}`)
        expect(post.u).toBeCloseTo(place(row, across), 9)
        const ground = metres(both, "net_posts.ground", row)
        expect(post.v[0]).toBeCloseTo(whole(row) ? ground - depth : metres(both, "top_level"), 9)
      }
    }
    function isEnd(row: number): boolean {
      return place(row, "x") < 1e-6 || place(row, "x") > long - 1e-6
    }
  })

  test("where the first end has no net, the section across shows the two corner posts there and no net", () => {
    const { posts, nets } = postsIn(book, "section-across")
    expect(book.entry("net_ends").reading?.text).toBe("1")
    expect([...posts.values()].map(({ u }) => u).sort((a, b) => a - b)).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(wide, 9),
    ])
    expect(nets).toBe(0)
  })

  test("between surveyed points a corner post stands on its corner's ground", () => {
    const { book: uneven } = openBook(template)
    const levels = [
      { x: "0 ft", y: "0 ft", level: "0 in" },
      { x: "20 ft", y: "0 ft", level: "-9 in" },
      { x: "20 ft", y: "12 ft", level: "2 in" },
      { x: "0 ft", y: "12 ft", level: "-4 in" },
    ]
    expect(uneven.editTable("ground_levels", levels).problems).toEqual([])
    expect(uneven.edit("ground_model", "between points").accepted).toBe(true)
    const depth = metres(uneven, "net_order.hole_depth", 1)
    const { posts } = postsIn(uneven, "side-1")
    const corners = [1, 2, 3, 4].map((row) => ({
      x: metres(uneven, "corners.x", row),
      y: metres(uneven, "corners.y", row),
      ground: metres(uneven, "corners.ground", row),
    }))
    expect(corners.map(({ ground }) => ground / 0.0254)).toEqual(
      [0, -9, 2, -4].map((inches) => expect.closeTo(inches, 6)),
    )
    for (const { x, y, ground } of corners) {
      const row = rows.find(
        (one) =>
          Math.hypot(metres(uneven, "net_posts.x", one) - x, metres(uneven, "net_posts.y", one) - y) < 1e-6,
      )
      expect(posts.get(row ?? 0)?.v[0]).toBeCloseTo(ground - depth, 9)
    }
  })

  test("posts that are bolted to the frame end at the rim's underside, and have no concrete", () => {
    const { book: bolted } = openBook(template)
    expect(bolted.edit("net_post_soil", "the frame, bolted").accepted).toBe(true)
    for (const id of ["side-1", "section-along"]) expect(postsIn(bolted, id).feet.size, id).toBe(0)
    const rim =
      metres(bolted, "top_level") -
      metres(bolted, "tile_thickness") -
      metres(bolted, "sheet_thickness") -
      metres(bolted, "rim_depth")
    for (const { v } of postsIn(bolted, "side-1").posts.values()) expect(v[0]).toBeCloseTo(rim, 9)
  })
})
