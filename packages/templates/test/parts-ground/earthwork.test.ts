import type { Definition, Section } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { cutFill, cutFillColumns, groundGrid } from "../../src/parts/cut-fill.ts"
import { services, spoil } from "../../src/parts/dig.ts"
import { fabric } from "../../src/parts/fabric.ts"
import { footings } from "../../src/parts/footings.ts"
import { houseRules } from "../../src/parts/house-rules.ts"
import { ground, size } from "../../src/parts/site.ts"
import { turfOff } from "../../src/parts/turf.ts"
import { givens, readOf } from "./workbook.ts"

/** Published worked examples, by record of the reference collection, against the parts that do the same work. */

const definition = (...sections: readonly Section[]): Definition => ({
  id: "earthwork",
  title: "Earthwork",
  says: "For tests.",
  unitSystem: "us",
  sections: [...sections, houseRules],
  cautions: [],
})

const YARD = 27
const FLAT = { ground_fall_length: "0 in", ground_fall_width: "0 in", stone_margin: "0 in" }

const site = definition(
  size,
  ground,
  groundGrid(cutFillColumns),
  cutFill,
  givens({ spoil_loose_factor: ["ratio", "1.25"] }),
)

describe("the grid method", () => {
  /** m-009: one cell of 50 by 50 ft, filled to 90 ft: 2.15 ft of fill on average, 199 cu yd. */
  test("fill of one published cell", () => {
    const read = readOf(
      site,
      {
        ...FLAT,
        platform_length: "50 ft",
        platform_width: "50 ft",
        grid_cells_length: "1",
        grid_cells_width: "1",
        ground_model: "between points",
        formation_depth: "-1.4 ft",
      },
      [
        { x: "0 ft", y: "0 ft", level: "87.6 ft" },
        { x: "50 ft", y: "0 ft", level: "87.6 ft" },
        { x: "50 ft", y: "50 ft", level: "87.6 ft" },
        { x: "0 ft", y: "50 ft", level: "88.6 ft" },
      ],
    )
    expect(read.inches("formation_level") / 12).toBeCloseTo(90, 9)
    expect(read.inches("ground_mean") / 12).toBeCloseTo(87.85, 9)
    expect(read.cubicFeet("fill_volume") / YARD).toBeCloseTo(199.07, 2)
    expect(read.cubicFeet("cut_volume")).toBe(0)
  })

  /** c-025: corners of one cell count once, of two twice, of four four times; over four. */
  test("weights of a grid of two by two cells", () => {
    const read = readOf(site, { grid_cells_length: "2", grid_cells_width: "2" })
    expect(read.column("grid.cells")).toEqual([1, 2, 1, 2, 4, 2, 1, 2, 1])
    const areas = read.column("grid.area").reduce((sum, area) => sum + area, 0)
    expect(areas).toBeCloseTo(read.number("pad_area"), 9)
  })

  /** Against the volume under a tilted plane, cut exactly: prisms on triangles, their corners cut off where fill begins. */
  test("cut of a tilted plane, against prisms cut off at the formation", () => {
    const [length, width, fall] = [30, 18, 2]
    const read = readOf(site, {
      ...FLAT,
      platform_length: `${length} ft`,
      platform_width: `${width} ft`,
      ground_fall_length: `${fall} ft`,
      formation_depth: "1.5 ft",
    })
    const run = (1.5 / fall) * length
    expect(read.cubicFeet("cut_volume")).toBeCloseTo((run * 1.5 * width) / 2, 9)
    const rest = length - run
    expect(read.cubicFeet("fill_volume")).toBeCloseTo((rest * 0.5 * width) / 2, 9)
  })

  /** c-030: any plane through the middle at the mean level balances. */
  test("at the mean level cut and fill are equal, whatever the falls", () => {
    for (const [along, across] of [
      ["0 in", "0 in"],
      ["9 in", "0 in"],
      ["3 in", "14 in"],
    ] as const) {
      const read = readOf(site, { ground_fall_length: along, ground_fall_width: across })
      expect(read.cubicFeet("cut_volume")).toBeCloseTo(read.cubicFeet("fill_volume"), 9)
      const steeper = readOf(site, {
        ground_fall_length: along,
        ground_fall_width: across,
        formation_depth: "20 in",
      })
      expect(steeper.cubicFeet("cut_volume")).toBeGreaterThan(read.cubicFeet("cut_volume"))
    }
  })
})

describe("states of soil", () => {
  /** m-007, a hundredth of it: 185 cu yd tamped, shrinkage 15 %, swell 20 %: 217.647 in the ground, 261.176 loose. */
  test("borrow for a bank", () => {
    const read = readOf(site, {
      ...FLAT,
      platform_length: "50 ft",
      platform_width: "37 ft",
      formation_depth: "-2.7 ft",
      soil_tamped_factor: "0.85",
      spoil_loose_factor: "1.2",
    })
    expect(read.cubicFeet("fill_volume") / YARD).toBeCloseTo(185, 6)
    expect(read.cubicFeet("fill_from_ground") / YARD).toBeCloseTo(217.647, 3)
    expect(read.cubicFeet("cut_left_over") / YARD).toBeCloseTo(-261.176, 3)
  })

  /** m-008: 1,000 in the ground, swell 30 %, 7 to a load: 1,300 loose, 186 loads. Here in cubic feet and barrows. */
  test("clay, and the loads it makes", () => {
    const soil = definition(
      { id: "spoil", title: "Spoil", says: "For tests.", entries: spoil },
      givens({ dug_volume: ["volume", "1000 ft3"] }),
    )
    const read = readOf(soil, { spoil_loose_factor: "1.3", barrow_volume: "7 ft3" })
    expect(read.cubicFeet("dug_volume_loose")).toBeCloseTo(1300, 9)
    expect(read.number("spoil_barrows")).toBe(186)
  })

  /**
   * m-010: 577.25 sq ft stripped 9 in deep, swell 10 %: 432.94 cu ft, printed as 16.02 and 17.63 cu yd.
   * The example takes 0.037 for a twenty-seventh; with 27 cu ft to the yard it is 16.03 and 17.64.
   */
  test("topsoil of three rectangles", () => {
    const strip = definition(
      turfOff("strip_area"),
      givens({
        strip_area: ["area", `${10.5 * 17 + 14.5 * 12.5 + 15 * 14.5} ft2`],
        spoil_loose_factor: ["ratio", "1.1"],
      }),
    )
    const read = readOf(strip, { strip_depth: "9 in", turf_thickness: "2 in" })
    expect(read.squareFeet("turf_area")).toBeCloseTo(577.25, 9)
    expect(read.cubicFeet("strip_volume")).toBeCloseTo(432.94, 2)
    expect(read.cubicFeet("strip_volume") * 0.037).toBeCloseTo(16.02, 2)
    expect(read.cubicFeet("strip_volume_loose") / YARD).toBeCloseTo(17.638, 3)
    expect(read.cubicFeet("turf_volume") + read.cubicFeet("topsoil_volume")).toBeCloseTo(432.9375, 6)
  })

  /** c-001: weights of common earth, 3,100 lb in the ground and 2,480 loose: a swell of a quarter, as the parts start with. */
  test("swell from weights", () => {
    const read = readOf(
      definition(
        { id: "spoil", title: "Spoil", says: "For tests.", entries: spoil },
        givens({ dug_volume: ["volume", "1 ft3"] }),
      ),
    )
    expect(read.number("spoil_loose_factor")).toBeCloseTo(3100 / 2480, 9)
  })
})

describe("slope", () => {
  /** m-013: from (200, 50, 87) to (295, 75, 90): 98.23 apart, 3.05 %. The third point makes that the way straight down. */
  test("grade from two points", () => {
    const read = readOf(definition(size, ground), {}, [
      { x: "200 in", y: "50 in", level: "87 in" },
      { x: "295 in", y: "75 in", level: "90 in" },
      { x: "175 in", y: "145 in", level: "87 in" },
    ])
    expect(read.number("ground_steepness")).toBeCloseTo(0.03054, 5)
    expect(read.columnInches("level_neighbours.apart")[0]).toBeCloseTo(98.234, 3)
  })
})

describe("fabric", () => {
  /** The worked deck of 12 by 16 ft: turned up 6 in each side, 13 by 17 ft. */
  test("the worked deck's 221 sq ft", () => {
    const read = readOf(definition(size, fabric), { platform_length: "16 ft", platform_width: "12 ft" })
    expect(read.squareFeet("fabric_area")).toBeCloseTo(221, 9)
  })

  test("strips lap: an exact fit takes no strip more, a hair over does (geometry)", () => {
    const typed = { fabric_turn_up: "0 in", fabric_lap: "12 in", fabric_roll_width: "6 ft" }
    const read = readOf(definition(size, fabric), { ...typed, platform_width: "11 ft" })
    expect(read.number("fabric_strips")).toBe(2)
    read.set({ platform_width: "11 ft 1/16 in" })
    expect(read.number("fabric_strips")).toBe(3)
    read.set({ platform_width: "5 ft" })
    expect(read.number("fabric_strips")).toBe(1)
  })
})

describe("footings below the frost", () => {
  const deep = definition(
    footings,
    givens({
      frost_depth: ["length", "42 in"],
      support_count: ["count", "1"],
      support_load_max: ["force", "4250 lb"],
      soil_bearing: ["pressure", "1500 psf"],
      spoil_loose_factor: ["ratio", "1.25"],
    }),
  )

  /** m-015, m-016: face of footing by load and soil. The source's table never goes below 144 sq in; that floor is not ours. */
  test.each([
    ["4250 lb", [612, 408, 306, 204, 153]],
    ["5300 lb", [763.2, 508.8, 381.6, 254.4, 190.8]],
  ] as const)("diameter for %s", (load, faces) => {
    for (const [index, soil] of [1000, 1500, 2000, 3000, 4000].entries()) {
      const read = readOf(deep, { support_load_max: load, soil_bearing: `${soil} psf` })
      expect((Math.PI * read.inches("footing_diameter_needed") ** 2) / 4).toBeCloseTo(faces[index] ?? 0, 6)
    }
  })

  /**
   * g-001 to g-003: 90, 60 or 45 bags of 40, 60 or 80 lb to the yard. g-004: an article prints 0.60 cu ft for the 40 lb bag in
   * one paragraph, which would make it 45 bags; 0.30 is right.
   */
  test("bags to the yard", () => {
    const read = readOf(deep)
    expect(read.column("concrete_bags.yield").map((one) => 0.764554857984 / one)).toEqual([
      expect.closeTo(90, 9),
      expect.closeTo(60, 9),
      expect.closeTo(45, 9),
    ])
  })

  /** 4 holes of 12 in, 4 ft of concrete each: 12.57 cu ft. By hand: 41.9, 27.9 and 20.9 bags. */
  test("bags for four footings, rounded up once for all", () => {
    const read = readOf(deep, { support_count: "4", footing_diameter: "12 in", footing_above_ground: "6 in" })
    expect(read.cubicFeet("footing_concrete")).toBeCloseTo(4 * Math.PI, 9)
    expect(read.column("concrete_bags.count")).toEqual([42, 28, 21])
  })

  /** a-023: never less than 12 in below undisturbed ground. */
  test("without frost a footing still goes 12 in down", () => {
    expect(readOf(deep, { frost_depth: "0 in" }).inches("footing_depth")).toBeCloseTo(12, 9)
    expect(readOf(deep).inches("footing_depth")).toBeCloseTo(42, 9)
  })
})

describe("nothing is dug before services are marked (e-023 to e-026)", () => {
  const hold = definition(services, givens({ greatest_dig: ["length", "7 in"] }))

  test("the check waits for an answer, fails on no, passes on yes", () => {
    const read = readOf(hold)
    expect(read.verdict("services_check")).toBe("needs_entry")
    read.set({ services_located: "no", locate_notice_days: "5" })
    expect(read.verdict("services_check")).toBe("fails")
    expect(read.book.entry("services_check").check?.advice[0]).toMatch(/5 working days.*7"/)
    read.set({ services_located: "yes" })
    expect(read.verdict("services_check")).toBe("passes")
  })
})
