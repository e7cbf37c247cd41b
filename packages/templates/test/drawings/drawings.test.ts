import {
  type Book,
  type Drawing,
  type DrawnArea,
  type DrawnShape,
  openBook,
  resolveDrawing,
} from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

const HAIR = 1e-6

function pointsOf(shape: DrawnShape) {
  if (shape.kind === "area" || shape.kind === "line") return shape.points
  return shape.kind === "mark" ? [shape.at] : []
}

function spanOf(shape: DrawnShape, axis: "u" | "v"): readonly [number, number] {
  const places = pointsOf(shape).map((point) => point[axis])
  return [Math.min(...places), Math.max(...places)]
}

const areas = (drawn: readonly DrawnShape[], layer: string) =>
  drawn.filter((shape): shape is DrawnArea => shape.kind === "area" && shape.layer === layer)

const metres = (book: Book, name: string, row?: number): number => {
  const { reading, readings } = book.entry(name)
  return Number((row === undefined ? reading : readings?.[row - 1])?.value)
}

function find(drawings: readonly Drawing[], id: string): Drawing {
  const found = drawings.find((one) => one.id === id)
  if (found === undefined) throw new Error(`no drawing ${id}`)
  return found
}

describe.each(TEMPLATES.map((template) => [template.id, template] as const))("%s", (_, template) => {
  const { book } = openBook(template)
  const drawings = template.drawings ?? []
  const shapesOf = (id: string) => resolveDrawing(find(drawings, id), book).shapes

  test("has a plan, sections, a view of each side, details and the stack; each has an id and words of its own", () => {
    const ids = drawings.map((one) => one.id)
    expect(ids).toEqual(
      expect.arrayContaining([
        "plan",
        "section-along",
        "section-across",
        "side-1",
        "side-2",
        "side-3",
        "side-4",
        "detail-edge",
        "stack",
        "set-out",
      ]),
    )
    expect(new Set(ids).size).toBe(ids.length)
    expect(new Set(drawings.map((one) => one.title)).size).toBe(ids.length)
  })

  test("draws something on every layer, or says why there is nothing to draw", () => {
    for (const drawing of drawings) {
      const { shapes, bounds } = resolveDrawing(drawing, book)
      if (bounds === undefined) expect(drawing.empty, drawing.id).toBeTypeOf("string")
      else expect(shapes.length, drawing.id).toBeGreaterThan(3)
    }
  })

  test("every shape is of a name in the workbook, in a row that the table has", () => {
    for (const drawing of drawings) {
      for (const shape of resolveDrawing(drawing, book).shapes) {
        expect(book.has(shape.of.name), `${drawing.id}: ${shape.of.name}`).toBe(true)
        if (shape.of.row !== undefined) {
          expect(shape.of.row).toBeGreaterThan(0)
          expect(shape.of.row).toBeLessThanOrEqual(book.table(shape.of.name).rowCount)
        }
        for (const name of shape.reads) expect(book.has(name), name).toBe(true)
      }
    }
  })

  test("every number written is a reading of the workbook", () => {
    for (const drawing of drawings) {
      for (const shape of resolveDrawing(drawing, book).shapes) {
        if (shape.label === undefined) continue
        const readings = shape.reads.flatMap((name) => {
          const view = book.entry(name)
          return view.readings === undefined
            ? [view.reading?.text]
            : [view.readings[(shape.of.row ?? 1) - 1]?.text]
        })
        expect(readings, `${drawing.id}: ${shape.of.name}`).toContain(shape.label)
      }
    }
  })

  test("nothing is drawn outside of a detail's frame", () => {
    for (const drawing of drawings.filter(({ frame }) => frame?.x !== undefined)) {
      const { bounds } = resolveDrawing(drawing, book)
      const whole = resolveDrawing({ ...drawing, shapes: drawing.shapes }, book)
      expect(bounds).toEqual(whole.bounds)
      const extent = drawing.frame?.x
      if (bounds === undefined || extent === undefined || !("centre" in extent)) continue
      const sizes = Array.isArray(extent.size) ? extent.size.map(String) : [String(extent.size)]
      const width = sizes.reduce((sum, name) => sum + metres(book, name), 0)
      expect(bounds.most.u - bounds.least.u, drawing.id).toBeLessThanOrEqual(width + HAIR)
    }
  })

  test("in the plan the platform is as long and as wide as entered, and all of the frame lies in it", () => {
    const plan = shapesOf("plan")
    const [outline] = areas(plan, "outline")
    if (outline === undefined) throw new Error("no outline")
    expect(spanOf(outline, "u")[1]).toBeCloseTo(metres(book, "platform_length"))
    expect(spanOf(outline, "v")[1]).toBeCloseTo(metres(book, "platform_width"))
    for (const shape of ["lines", "joists", "rims", "sheets", "tiles"].flatMap((layer) =>
      areas(plan, layer),
    )) {
      const [left, right] = spanOf(shape, "u")
      const [near, far] = spanOf(shape, "v")
      expect(left, shape.layer).toBeGreaterThanOrEqual(-HAIR)
      expect(near, shape.layer).toBeGreaterThanOrEqual(-HAIR)
      expect(right, shape.layer).toBeLessThanOrEqual(metres(book, "platform_length") + HAIR)
      expect(far, shape.layer).toBeLessThanOrEqual(metres(book, "platform_width") + HAIR)
    }
  })

  test.runIf(book.has("joists"))("each joist lies where its row says", () => {
    const joists = areas(shapesOf("plan"), "joists")
    expect(joists).toHaveLength(book.table("joists").rowCount)
    for (const joist of joists) {
      const [left, right] = spanOf(joist, "u")
      expect((left + right) / 2).toBeCloseTo(metres(book, "joists.position", joist.of.row), 9)
      expect(right - left).toBeCloseTo(metres(book, "joist_thickness"), 9)
    }
  })

  test("pegs stand where their offsets say, strings cross at the corners, and diagonals join opposite ones", () => {
    const shapes = shapesOf("set-out")
    const pegs = new Map(
      shapes.flatMap((shape) => (shape.kind === "mark" ? [[shape.label ?? "", shape.at] as const] : [])),
    )
    expect(pegs.size).toBe(book.table("set_out_points").rowCount)
    const [long, wide] = [metres(book, "platform_length"), metres(book, "platform_width")]
    const corners = { A: [0, 0], B: [long, 0], C: [long, wide], D: [0, wide] } as const
    for (const [letter, [u, v]] of Object.entries(corners)) {
      expect(pegs.get(letter)?.u, letter).toBeCloseTo(u, 9)
      expect(pegs.get(letter)?.v, letter).toBeCloseTo(v, 9)
    }
    const drawnOn = (layer: string) =>
      shapes.flatMap((shape) => (shape.kind === "line" && shape.layer === layer ? [shape.points] : []))
    // A string through two corners: both lie between its pegs, on the straight line from one to the other.
    const strings = drawnOn("strings")
    for (const [one, other] of [
      ["A", "B"],
      ["D", "C"],
      ["A", "D"],
      ["B", "C"],
    ] as const)
      expect(
        strings.filter(([from, to]) =>
          [one, other].every((letter) => {
            const [u, v] = corners[letter]
            if (from === undefined || to === undefined) return false
            const left = Math.hypot(u - from.u, v - from.v)
            const right = Math.hypot(to.u - u, to.v - v)
            return Math.abs(left + right - Math.hypot(to.u - from.u, to.v - from.v)) < HAIR && left > 0.1
          }),
        ),
        `${one}${other}`,
      ).toHaveLength(1)
    const spans = drawnOn("diagonals").map(([a, b]) =>
      Math.hypot((b?.u ?? 0) - (a?.u ?? 0), (b?.v ?? 0) - (a?.v ?? 0)),
    )
    expect(spans).toHaveLength(2)
    for (const span of spans) expect(span).toBeCloseTo(Math.hypot(long, wide), 9)
    // Sides of 3 and 4 parts have 5 across: Euclid I.48.
    const [across] = drawnOn("triangle")
    const parts = [across?.[0]?.v ?? 0, across?.[1]?.u ?? 0]
    expect((parts[0] ?? 0) / 3).toBeCloseTo((parts[1] ?? 0) / 4, 9)
    expect(drawnOn("middles")).toHaveLength(book.table("set_out_lines").rowCount)
  })

  test("each support's hole goes from its ground to its bottom, and its stone to where the timber or block lies", () => {
    if (!book.has("supports") || !book.has("supports.dig")) return
    for (const hole of areas(shapesOf("section-along"), "dig")) {
      const [bottom, top] = spanOf(hole, "v")
      expect(top - bottom).toBeCloseTo(metres(book, "supports.dig", hole.of.row), 9)
    }
  })

  test("blocks stand course on course up to the timber", () => {
    if (!book.has("supports.courses")) return
    const blocks = areas(shapesOf("section-along"), "blocks")
    for (const row of new Set(blocks.map((block) => block.of.row))) {
      const stack = blocks.filter((block) => block.of.row === row)
      expect(stack).toHaveLength(metres(book, "supports.courses", row))
      expect(Math.max(...stack.map((block) => spanOf(block, "v")[1]))).toBeCloseTo(
        metres(book, "underside_level"),
        9,
      )
    }
  })

  test("each side's heights go from the ground to the surface", () => {
    for (const side of [1, 2, 3, 4]) {
      const heights = shapesOf(`side-${side}`).filter((shape) => shape.layer === "heights")
      expect(heights.length).toBeGreaterThan(2)
      for (const line of heights) {
        const [ground, top] = spanOf(line, "v")
        expect(top - ground).toBeCloseTo(metres(book, "edge_stations.height", line.of.row), 9)
      }
    }
  })

  test.runIf(book.has("step_places"))("each tread goes one tread's depth outward and one riser down", () => {
    for (const row of [1, 2]) {
      const treads = areas(shapesOf("side-1"), "access").filter((shape) => shape.of.row === row)
      expect(treads).toHaveLength(metres(book, "step_places.treads", row))
      const riser = metres(book, "step_places.riser_height", row)
      const edge = metres(book, "step_places.x", row)
      for (const [at, tread] of treads.entries()) {
        const [left, right] = spanOf(tread, "u")
        expect(right - left).toBeCloseTo(metres(book, "tread_depth"), 9)
        expect(Math.min(Math.abs(left - edge), Math.abs(right - edge))).toBeCloseTo(
          at * metres(book, "tread_depth"),
          9,
        )
        expect(spanOf(tread, "v")[1]).toBeCloseTo(metres(book, "top_level") - (at + 1) * riser, 9)
      }
    }
  })

  test.runIf(book.has("step_places"))(
    "steps at every side are seen from every side, in front of it and beside it",
    () => {
      const { book: all } = openBook(template)
      for (const [name, typed] of [
        ["steps_high_end", "yes"],
        ["steps_low_end", "yes"],
        ["access_high_end", "steps"],
        ["access_low_end", "steps"],
        ["steps_first_side", "yes"],
        ["steps_other_side", "yes"],
        ["top_height", "30 in"],
      ] as const)
        if (all.has(name)) expect(all.edit(name, typed).accepted, name).toBe(true)
      const rowOf = (side: number) =>
        [1, 2, 3, 4].find((row) => metres(all, "climbs.side", row) === side) ?? expect.fail(`no side ${side}`)
      const treadsOf = (side: number) => metres(all, "step_places.treads", rowOf(side))
      for (const side of [1, 2, 3, 4]) expect(treadsOf(side), `side ${side}`).toBeGreaterThan(0)
      for (const side of [1, 2, 3, 4] as const) {
        const { shapes } = resolveDrawing(find(drawings, `side-${side}`), all)
        const seen = areas(shapes, "access").filter(({ of }) => of.name === "step_places")
        // The one behind the platform is hidden by it.
        const behind = ((side + 1) % 4) + 1
        for (const other of [1, 2, 3, 4]) {
          const treads = seen.filter(({ of }) => of.row === rowOf(other))
          expect(treads.length, `side ${other} from side ${side}`).toBe(
            other === behind ? 0 : treadsOf(other),
          )
        }
      }
    },
  )

  test.runIf(book.has("beam_joints"))(
    "where planks of a beam meet, the plan has a stroke across that plank alone",
    () => {
      const { book: short } = openBook(template)
      expect(short.edit("beam_stock", "8 ft").accepted).toBe(true)
      const drawn = resolveDrawing(find(drawings, "plan"), short).shapes
      const strokes = drawn.filter((shape) => shape.kind === "line" && shape.layer === "joints")
      expect(strokes.length).toBe(short.table("beam_joints").rowCount)
      expect(strokes.length).toBeGreaterThan(0)
      for (const stroke of strokes) {
        const { row = 0 } = stroke.of
        expect(spanOf(stroke, "u")[0]).toBeCloseTo(metres(short, "beam_joints.position", row), 9)
        const [near, far] = spanOf(stroke, "v")
        // Planks of a beam lie one against the other, and the beam's middle is theirs.
        const plank = metres(short, "beam_joints.line", row)
        const plies = metres(short, "beam_plies")
        const [beam, place] = [Math.floor((plank - 1) / plies), (plank - 1) % plies]
        const first = metres(short, "beams.y", beam + 1) - metres(short, "beam_thickness") / 2
        const thick = metres(short, "beam_thickness") / plies
        expect((near + far) / 2).toBeCloseTo(first + (place + 0.5) * thick, 9)
      }
      expect(resolveDrawing(find(drawings, "detail-joint"), short).bounds).toBeDefined()
    },
  )

  test.runIf(book.has("net_height"))("the net hangs from its height down to the surface", () => {
    const [net] = areas(shapesOf("side-1"), "net")
    if (net === undefined) throw new Error("no net")
    const [foot, head] = spanOf(net, "v")
    expect(head - foot).toBeCloseTo(metres(book, "net_height"), 9)
    expect(foot).toBeCloseTo(metres(book, "top_level"), 9)
  })

  describe.runIf(book.has("guard_sides"))("posts of a guard on all sides", () => {
    const { book: guarded } = openBook(template)
    guarded.editAll({ guard_where: "on all sides", platform_length: "16 ft" })
    const seen = (id: string) => areas(resolveDrawing(find(drawings, id), guarded).shapes, "guards")
    const ofSide = (id: string, side: number) => seen(id).filter(({ of }) => of.row === side)
    const cell = (name: string, row = 1) => metres(guarded, name, row)
    const SIDES = [1, 2, 3, 4] as const

    test("stand along their side from end to end, as far apart as their row says", () => {
      for (const side of SIDES) {
        const axis = side % 2 === 1 ? "u" : "v"
        const places = ofSide("plan", side).map((shape) => spanOf(shape, axis))
        expect(places, `side ${side}`).toHaveLength(cell("guard_sides.posts", side))
        expect(places.length).toBeGreaterThan(1)
        expect(places[0]?.[0]).toBeCloseTo(0, 9)
        expect(places.at(-1)?.[1]).toBeCloseTo(cell("guard_sides.length", side), 9)
        for (const [at, [from]] of places.entries())
          expect(from).toBeCloseTo(at * cell("guard_sides.spacing", side), 9)
      }
    })

    test("stand against the outside of the frame, none in another's place", () => {
      const plan = resolveDrawing(find(drawings, "plan"), guarded).shapes
      const frame = [...areas(plan, "rims"), ...areas(plan, "joists"), ...areas(plan, "lines")]
      const apart = (one: DrawnShape, other: DrawnShape) =>
        (["u", "v"] as const).some((axis) => {
          const [[a, b], [c, d]] = [spanOf(one, axis), spanOf(other, axis)]
          return b <= c + HAIR || d <= a + HAIR
        })
      const posts = areas(plan, "guards")
      for (const [at, one] of posts.entries())
        for (const other of [...frame, ...posts.slice(at + 1)])
          expect(apart(one, other), `${one.of.row}: ${other.of.name} ${other.of.row}`).toBe(true)
      // On the long sides they touch what they are bolted to.
      const timber = Math.min(...frame.map((shape) => spanOf(shape, "v")[0]))
      for (const post of ofSide("plan", 1)) expect(spanOf(post, "v")[1]).toBeCloseTo(timber, 9)
    })

    test("reach from under the edge timber to the guard's height; behind the platform what is over it is seen", () => {
      const depth = guarded.has("rim_depth") ? "rim_depth" : "stringer_depth"
      const surface = metres(guarded, "top_level")
      const foot = surface - metres(guarded, "surface_build_up") - metres(guarded, depth)
      for (const side of SIDES) {
        const behind = ((side + 1) % 4) + 1
        for (const other of SIDES)
          for (const shape of ofSide(`side-${side}`, other)) {
            const [low, high] = spanOf(shape, "v")
            expect(high - surface).toBeCloseTo(cell("guard_sides.height", other), 9)
            expect(low).toBeCloseTo(other === behind ? surface : foot, 9)
          }
        expect(ofSide(`side-${side}`, side)).toHaveLength(cell("guard_sides.posts", side))
      }
      // A section shows what lies behind the cut, and the two sides that it cuts across.
      expect(new Set(seen("section-along").map(({ of }) => of.row))).toEqual(new Set([2, 3, 4]))
      expect(new Set(seen("section-across").map(({ of }) => of.row))).toEqual(new Set([1, 3, 4]))
    })

    test("are drawn nowhere while none is counted", () => {
      for (const drawing of drawings)
        expect(areas(resolveDrawing(drawing, book).shapes, "guards"), drawing.id).toEqual([])
    })
  })

  test("the stack of layers is drawn from the same rows as the plan", () => {
    const rows = (id: string, layer: string) =>
      new Set(areas(shapesOf(id), layer).map((shape) => shape.of.row))
    for (const layer of ["lines", "joists", "blocks"])
      expect(rows("stack", layer)).toEqual(rows("plan", layer))
  })

  test("a longer platform has a longer plan, and the drawing follows", () => {
    const { book: longer } = openBook(template)
    const before = resolveDrawing(find(drawings, "plan"), longer).bounds
    const text = longer.entry("platform_length").typed?.includes("m") ? "6.5 m" : "15 ft"
    expect(longer.edit("platform_length", text).accepted).toBe(true)
    const after = resolveDrawing(find(drawings, "plan"), longer).bounds
    expect(after?.most.u).not.toBe(before?.most.u)
  })
})
