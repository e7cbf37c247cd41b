import { describe, expect, test } from "vitest"
import { boardwalk } from "../../src/boardwalk/template.ts"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"
import { groundLevelDeck } from "../../src/ground-level-deck/template.ts"
import { TEMPLATES } from "../../src/index.ts"
import { shedBase } from "../../src/shed-base/template.ts"
import { reader } from "../helpers/read-book.ts"
import { handedDown } from "./statics.ts"

const game = reader(gameTablePlatform)
const deck = reader(groundLevelDeck)

describe("what soils bear", () => {
  // An extension circular's table of pier footings (records m-014 to m-016, read), in square inches.
  test.each([
    ["3200 lb", [307, 230, 154]],
    ["4250 lb", [408, 306, 204]],
    ["5300 lb", [509, 382, 254]],
  ])("a pier of %s", (load, inches) => {
    const soils = [
      "US: clay, silty or sandy clay, silt",
      "US: sand, silty or clayey sand or gravel",
      "US: gravel, sandy gravel",
    ]
    soils.forEach((soil, index) => {
      const bears = game().column("psf", "soil_values.bears")[game().texts("soil_values.soil").indexOf(soil)]
      const book = game({ soil_bearing: `${bears} psf` })
      const share = Number.parseFloat(load) / book.in("lb", "support_load_max")
      const area = (book.in("si", "block_face_needed") / 0.0254 ** 2) * share
      expect(Math.abs(area - (inches[index] ?? 0))).toBeLessThan(0.51)
    })
  })

  // National Building Code table 9.4.4.1 (records a-010 to a-018, read), with the kilopascals as printed.
  test.each([
    ["Canada: dense sand or gravel", 150, true],
    ["Canada: loose sand or gravel", 50, true],
    ["Canada: dense silt", 100, true],
    ["Canada: stiff clay", 150, false],
    ["Canada: firm clay", 75, false],
    ["Canada: soft clay", 40, false],
    ["Canada: till", 200, false],
    ["Canada: clay shale", 300, false],
    ["Canada: sound rock", 500, false],
    // International Building Code, table 1806.2 (records a-001 to a-005, read), in psf.
    ["US: crystalline bedrock", 12000 * 0.04788025898, false],
    ["US: layered rock", 4000 * 0.04788025898, false],
    ["US: gravel, sandy gravel", 3000 * 0.04788025898, true],
    ["US: sand, silty or clayey sand or gravel", 2000 * 0.04788025898, true],
    ["US: clay, silty or sandy clay, silt", 1500 * 0.04788025898, true],
  ])("%s: %d kPa", (soil, kilopascals, losesHalf) => {
    const row = game().texts("soil_values.soil").indexOf(soil)
    expect((game().column("si", "soil_values.bears")[row] ?? 0) / 1000).toBeCloseTo(kilopascals, 5)
    expect(game().texts("soil_values.loses_half")[row]).toBe(String(losesHalf))
  })

  // Record soil_bearing: sand, silt and gravel bear half where water stands within the foot's width.
  test("water nearer than the foot is wide halves what the soil bears, and not water farther down", () => {
    const ratio = (water: string) => game({ ground_water_depth: water }).ratio("soil_wet_check") ?? 0
    const dry = game().ratio("soil_wet_check") ?? 0
    const foot = Math.min(game().in("in", "block_length"), game().in("in", "block_course_width"))
    expect(ratio(`${foot - 1} in`)).toBeCloseTo(2 * dry, 9)
    expect(ratio(`${foot} in`)).toBeCloseTo(dry, 9)
  })
})

describe("frost", () => {
  test("a free platform may stand on the surface; one that touches a building may not", () => {
    for (const template of [gameTablePlatform, boardwalk]) {
      const read = reader(template)
      expect(read().verdict("free_standing_check")).toBe("passes")
      expect(read({ buildings_touched: "1" }).verdict("free_standing_check")).toBe("fails")
    }
  })

  test("deeper frost never lessens the rise, clay rises less than silt, and gravel not at all", () => {
    const rise = (frost_depth: string) => game({ frost_depth }).column("in", "frost_rises.rise")
    const [gravel, clay = 0, silt = 0] = rise("4 ft")
    expect(gravel).toBe(0)
    expect(silt).toBeGreaterThan(clay)
    expect(silt).toBeGreaterThan(rise("3 ft")[2] ?? 0)
    expect(clay).toBeCloseTo(0.03 * (48 - game({ frost_depth: "4 ft" }).in("in", "least_dig")), 9)
  })
})

describe("loads on the supports of deck and greenhouse", () => {
  test.each([groundLevelDeck, greenhouseFloor])("both ways carry the whole load", (definition) => {
    const book = reader(definition)()
    const sum = (name: string) => book.column("si", name).reduce((total, value) => total + value, 0)
    expect(sum("supports.reaction")).toBeCloseTo(book.in("si", "platform_load"), 3)
    expect(sum("supports.load")).toBeCloseTo(book.in("si", "platform_load"), 3)
    expect(book.ratio("reaction_check")).toBeGreaterThan(book.ratio("soil_bearing_check") ?? 1)
  })

  test("rows of reactions are the supports, in their order, and least, dead, full and most stand in that order", () => {
    const book = deck()
    const supports = book.column("si", "supports.x")
    supports.forEach((x, row) => {
      expect(book.column("si", "member_reactions.position")[row]).toBeCloseTo(x, 9)
      expect(book.column("si", "member_reactions.line")[row]).toBe(book.column("si", "supports.line")[row])
    })
    const [least, dead, full, most] = ["least", "dead", "full", "most"].map((name) =>
      book.column("si", `member_reactions.${name}`),
    )
    most?.forEach((value, row) => {
      expect(least?.[row]).toBeLessThanOrEqual((dead?.[row] ?? 0) + 1e-9)
      expect(full?.[row]).toBeLessThanOrEqual(value + 1e-9)
    })
  })

  test("an overhang counts twice its length, and is bent over its support by w a²/2", () => {
    const book = game({ "design_thresholds.point_load.1": "0 lb" })
    const width = handedDown(book.in("si", "platform_width"), book.column("si", "skids.y"))[0] ?? 0
    const overhang = book.in("si", "support_end_offset")
    expect(book.column("si", "member_spans.limit_length")[0]).toBeCloseTo(2 * overhang, 9)
    expect(book.column("si", "member_spans.moment")[0]).toBeCloseTo(
      (110 * 47.88025898033584 * width * overhang ** 2) / 2,
      6,
    )
  })
})

describe("planks that meet", () => {
  const jointed = { beam_stock: "8 ft", joint_stagger_min: "0 ft", piece_length_min: "1 ft" }

  test("where one of two planks meets its next, the other carries the bending alone", () => {
    const whole = deck().column("si", "members.bending_stress")[0] ?? 0
    const book = deck(jointed)
    expect(book.column("si", "ply_joints.together").every((count) => count === 1)).toBe(true)
    expect(book.column("si", "members.plies_through").slice(0, 2)).toEqual([1, 1])
    expect(book.column("si", "members.bending_stress")[0]).toBeCloseTo(2 * whole, 6)
  })

  test("a beam of one plank turns at its joint like a hinge", () => {
    const book = deck({ ...jointed, beam_plies: "1" })
    expect(book.column("si", "ply_joints.hinged").every((beam) => beam > 0)).toBe(true)
    expect(book.column("si", "members.plies_through")[0]).toBe(1)
    // Cut over every inner pad that has a joint: nothing there bends.
    const simple = book.column("si", "member_reactions.full")
    const through = deck({ beam_plies: "1" }).column("si", "member_reactions.full")
    expect(simple).not.toEqual(through)
  })
})

describe.each(TEMPLATES.map((definition) => [definition.id, definition] as const))("%s", (id, definition) => {
  const read = reader(definition)

  test("outside the tables says so, and shows no ratio", () => {
    const outside = { species: "Western Woods", grade: "No.1" }
    const book = read(outside)
    expect(book.book.entry("members.bending_ratio").readings?.every((reading) => reading === null)).toBe(true)
    expect(book.book.entry("members.worst").readings?.every((reading) => reading === null)).toBe(true)
    for (const check of ["member_bearing_check", "deflection_check"]) {
      expect(book.verdict(check), check).toBe("outside_table")
      expect(book.ratio(check), check).toBeUndefined()
    }
    expect(book.book.entry("strength_first").reading?.value).toMatch(/outside the tables/)
  })

  test("every check of strength has remedies, and only inputs that are there", () => {
    const entries = definition.sections.flatMap((section) => section.entries)
    const inputs = new Set(entries.flatMap((entry) => (entry.kind === "input" ? [entry.name] : [])))
    const strong = entries.filter(
      (entry) =>
        entry.kind === "check" &&
        /^(skid|joist|beam|stringer|sleeper|net_post|member_bearing|deflection|sheet|board|reaction|soil_bearing|soil_wet|soil_stone|loaded_joint|wind_.*|net_overturn)_check$/.test(
          entry.name,
        ),
    )
    expect(strong.length).toBeGreaterThanOrEqual(6)
    for (const entry of strong) {
      if (entry.kind !== "check") continue
      expect(entry.remedies?.length, `${id}: ${entry.name}`).toBeGreaterThan(0)
      for (const { input } of entry.remedies ?? []) expect(inputs, entry.name).toContain(input)
    }
  })
})

test("a skid of one plank too far apart is helped by a change that the workbook itself tries", () => {
  const book = reader(shedBase)({ support_spacing_max: "10 ft", live_load: "100 psf" })
  expect(book.verdict("skid_check")).toBe("fails")
  const [first] = book.book.remediesFor("skid_check")
  expect(first).toBeDefined()
})
