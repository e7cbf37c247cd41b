import type { SolverGiven } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { solvePostDepth } from "../../src/solvers/post-depth.ts"
import { reader } from "../helpers/read-book.ts"

const workbook = reader(gameTablePlatform)

describe("wind on a net against worked examples", () => {
  // Record i-012 (from memory of the physics): 1.5 mm twine, 30 mm mesh, 90 mph, 0.85, 0.85.
  test("a bare net at 90 mph: q 14.98 psf, solid share 0.0975, factor 1.2, 1.49 psf", () => {
    const book = workbook({
      net_twine: "1.5 mm",
      net_mesh: "30 mm",
      wind_speed: "90 mph",
      wind_exposure: "C",
    })
    expect(book.in("psf", "wind.velocity_pressure")).toBeCloseTo(14.98, 1)
    expect(book.in("si", "net_wind.solidity")).toBeCloseTo(0.0975, 9)
    expect(book.in("si", "net_wind.shape_factor")).toBe(1.2)
    expect(book.in("psf", "net_wind.pressure_by_formula")).toBeCloseTo(1.49, 2)
    // The floor of 16 psf on the twine governs: 16 × 0.0975.
    expect(book.in("psf", "net_wind.pressure")).toBeCloseTo(1.56, 9)
  })

  // ASCE 7-16 table 29.4-2 (records i-003 to i-005, read).
  test.each([
    ["0.5 mm", "20 mm", 1.2],
    ["1.5 mm", "20 mm", 1.3],
    ["4 mm", "20 mm", 1.5],
  ])("twine %s, mesh %s: factor %d", (twine, mesh, factor) => {
    expect(workbook({ net_twine: twine, net_mesh: mesh }).in("si", "net_wind.shape_factor")).toBe(factor)
  })

  test("a net more solid than the table's last row is said so", () => {
    expect(workbook({ net_twine: "9 mm", net_mesh: "15 mm" }).verdict("net_overturn_check")).toBe(
      "outside_table",
    )
  })

  test("bending, bolts and stress of a post by hand", () => {
    const book = workbook({ net_height: "6 ft", net_post_soil: "the frame, bolted" })
    // In feet: 1 1/2 in below the rim's top, and as much above the underside of a rim of 5 1/2 in.
    const top = book.in("ft", "tile_thickness") + book.in("ft", "sheet_thickness") + 1.5 / 12
    const apart = 2.5 / 12
    const load =
      book.in("psf", "net_wind.pressure") * book.in("ft", "net_wind.bay") +
      book.in("psf", "wind.velocity_pressure") * 0.85 * 2 * (3.5 / 12)
    expect(book.in("plf", "net_wind.post_load")).toBeCloseTo(load, 6)
    expect(book.in("lbft", "net_wind.post_moment")).toBeCloseTo((load * 36) / 2, 6)
    expect(book.in("lb", "net_wind.bolt_force")).toBeCloseTo((load * 6 * (3 + top + apart)) / apart, 5)
    // Bent most at the upper bolt.
    const posts = book.texts("members.member").indexOf("net posts")
    expect(book.column("psi", "members.bending_stress")[posts]).toBeCloseTo(
      (12 * load * 6 * (3 + top) * 6) / 3.5 ** 3,
      5,
    )
    // 4x4 Hem-Fir No.2, incised, wet, ten minutes: 850 × 1.5 × 0.85 × 0.8 × 1.6 (records of the published tables).
    expect(book.column("psi", "members.fb_allowed")[posts]).toBeCloseTo(850 * 1.5 * 0.85 * 0.8 * 1.6, 4)
  })

  test("a higher net, more wind or a finer mesh never lessens a post's bending", () => {
    const before = workbook().in("lbft", "net_wind.post_moment")
    for (const typed of [
      { net_height: "7 ft" },
      { wind_speed: "120 mph" },
      { net_mesh: "20 mm" },
      { net_post_spacing_max: "10 ft" },
    ])
      expect(workbook(typed).in("lbft", "net_wind.post_moment")).toBeGreaterThan(before)
  })
})

describe("depth of a post", () => {
  const depthOf = (given: Readonly<Record<string, number>>) => {
    const all: Record<string, number> = {
      "net_wind_factors.reference_depth": 1,
      "net_wind_factors.depth_factor": 2.34,
      "net_wind_factors.depth_ratio": 4.36,
      "net_wind_factors.depth_cap": 12,
      ...given,
    }
    const reads: SolverGiven = {
      number: (name) => all[name] ?? Number.NaN,
      column: () => [],
      text: () => "",
      yes: () => false,
    }
    return solvePostDepth(reads)
  }
  const SIGN = {
    "net_wind.post_force": 480,
    "net_wind.arm": 5,
    "net_wind_factors.hole_width": 1.5,
    "net_wind.lateral": 100,
  }

  // A sign of 4 by 8 ft (record m-023, read): 480 lb at 5 ft, 1.5 ft wide, 100 psf a foot: "almost 6.5 ft", recomputed 6.44.
  test("the sign: 6.44 ft, and 4.88 ft where the soil may count twice", () => {
    expect(depthOf(SIGN).report.objective?.value).toBeCloseTo(6.44, 2)
    expect(depthOf({ ...SIGN, "net_wind.lateral": 200 }).report.objective?.value).toBeCloseTo(4.88, 2)
  })

  test("satisfies the published formula, with every intermediate in the last row", () => {
    const { rows, report } = depthOf(SIGN)
    const last = rows.at(-1)
    const depth = report.objective?.value ?? 0
    const pressure = (100 * depth) / 3
    const reach = (2.34 * 480) / (pressure * 1.5)
    expect(last?.pressure).toBeCloseTo(pressure, 4)
    expect(last?.reach).toBeCloseTo(reach, 6)
    expect(depth).toBeCloseTo(0.5 * reach * (1 + Math.sqrt(1 + (4.36 * 5) / reach)), 6)
  })

  test("no wind needs no depth; a huge force settles beyond the depth at which soil counts no stronger", () => {
    expect(depthOf({ ...SIGN, "net_wind.post_force": 0 }).rows).toEqual([])
    const { report } = depthOf({ ...SIGN, "net_wind.post_force": 20_000 })
    const depth = report.objective?.value ?? 0
    expect(report.unmet).toEqual([])
    expect(depth).toBeGreaterThan(12)
    const reach = (2.34 * 20_000) / (400 * 1.5)
    expect(depth).toBeCloseTo(0.5 * reach * (1 + Math.sqrt(1 + (4.36 * 5) / reach)), 6)
  })

  test("in a workbook: weaker soil, more wind or a narrower hole never lessens it", () => {
    const before = workbook({ net_post_soil: "gravel" }).column("ft", "net_post_embedment.found").at(-1) ?? 0
    expect(
      workbook({ net_post_soil: "clay or silt" }).column("ft", "net_post_embedment.found").at(-1),
    ).toBeGreaterThan(before)
    expect(
      workbook({ net_post_soil: "gravel", wind_speed: "140 mph" })
        .column("ft", "net_post_embedment.found")
        .at(-1),
    ).toBeGreaterThan(before)
    expect(
      workbook({ net_post_soil: "gravel", "net_wind_factors.hole_width.1": "6 in" })
        .column("ft", "net_post_embedment.found")
        .at(-1),
    ).toBeGreaterThan(before)
  })
})
