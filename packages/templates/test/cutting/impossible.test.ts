import { expect, test } from "vitest"
import { type Case, heuristicAnswer, solveCase } from "../../src/cutting/index.ts"
import { boardList, caseOf, order, sheets, skids } from "./cases.ts"

/** Sets the field that a change names, as a person would who follows it. */
function changed(one: Case, field: string, to: number | boolean): Case {
  const copy = structuredClone(one) as object
  const steps = field.split(/[.[\]]+/).filter((step) => step !== "")
  const last = steps.pop() ?? ""
  const inside = steps.reduce<object>((at, step) => Reflect.get(at, step) as object, copy)
  Reflect.set(inside, last, to)
  return caseOf(copy)
}

const ONE_COURSE = { platform: { acrossJoists: 3072, alongJoists: 768 }, courses: [768] }

const IMPOSSIBLE: readonly (readonly [says: string, one: Case, field: string, to: number | boolean])[] = [
  ["a piece longer than any board", boardList([[1000, 5]], [[1001, 1]]), "stocks[0].length", 1001],
  ["a piece that the end trim spoils", boardList([[1000, 5]], [[990, 1]], { endTrim: 8 }), "endTrim", 5],
  ["too few boards", boardList([[1000, 5, 2]], [[600, 3]]), "stocks[0].available", 3],
  ["supports too far apart", skids({ supports: [0, 2000, 4000, 6000, 8000] }), "stocks[0].length", 4000],
  ["a bearing too short at every joint", skids({ bearing: [90, 90, 90, 90, 90] }), "minBearing", 45],
  ["no two layouts apart", skids({ minStagger: 2000 }), "minStagger", 1200],
  [
    "spliced skids and too few boards",
    skids({ stocks: [{ id: "s", length: 1810, price: 9, available: 2 }] }),
    "stocks[0].available",
    3,
  ],
  [
    "sheets too short for their bays",
    sheets({ sheet: { length: 500, width: 768 }, ...ONE_COURSE }),
    "minBaysForPiece",
    1,
  ],
  ["courses higher than a sheet is wide", sheets({ courses: [800, 736] }), "sheet.width", 800],
  ["joints of sheets that cannot be apart", sheets({ stagger: 2000 }), "stagger", 768],
  [
    "a thing that nobody has enough of",
    order({
      offers: [
        {
          line: "screws",
          supplier: "A",
          packSize: 25,
          breaks: [{ fromPacks: 1, pricePerPack: 3 }],
          availablePacks: 2,
        },
      ],
    }),
    "offers[0].availablePacks",
    4,
  ],
]

test.each(IMPOSSIBLE)(
  "%s: says what stops it, and the smallest change frees it",
  async (_, one, field, to) => {
    const answer = await solveCase(one)
    expect(answer).toMatchObject({ status: "impossible", objective: null, bound: null, plan: null })
    const change = answer.impossible?.changes.find((other) => other.field === field)
    expect(change, answer.impossible?.says).toMatchObject({ to })
    expect(answer.impossible?.says).toContain(change?.says)
    expect((await solveCase(changed(one, field, to))).status).toBe("proven")
    if (typeof to !== "number" || typeof change?.from !== "number") return
    const oneLess = to + Math.sign(change.from - to)
    expect((await solveCase(changed(one, field, oneLess))).status).toBe("impossible")
  },
)

test("a line that one supplier alone cannot fill is freed by two", async () => {
  const offer = {
    line: "screws",
    packSize: 25,
    breaks: [{ fromPacks: 1, pricePerPack: 300 }],
    availablePacks: 2,
  }
  const one = order({
    oneSupplierForEachLine: true,
    offers: [
      { ...offer, supplier: "A" },
      { ...offer, supplier: "B" },
    ],
  })
  const { impossible } = await solveCase(one)
  expect(impossible?.changes[0]).toMatchObject({ field: "oneSupplierForEachLine", to: false })
})

test("nothing to cut costs nothing", async () => {
  expect(await solveCase(boardList([], []))).toMatchObject({
    status: "proven",
    objective: 0,
    plan: { boards: [], buy: [] },
  })
})

test("a solver that does not load leaves the plan made at once, and says so", async () => {
  const broken = {
    name: "none",
    solve: () => Promise.reject(new Error("no file highs.wasm")),
    relaxed: () => Promise.reject(new Error("no file highs.wasm")),
  }
  const one = boardList(
    [[400, 1]],
    [
      [201, 6],
      [102, 6],
      [101, 6],
      [98, 12],
    ],
  )
  const answer = await solveCase(one, { solver: broken })
  const atOnce = heuristicAnswer(one)
  expect(answer).toMatchObject({ objective: atOnce.objective, bound: atOnce.bound, plan: atOnce.plan })
  expect(answer.notices[0]).toMatch(/exact solver could not be used.*highs\.wasm.*simple bound/)
})

test("a search that is cut short gives a sound plan and its gap", async () => {
  const cutShort = {
    name: "stopped",
    solve: () => Promise.resolve({ status: "limit" as const }),
    relaxed: () => Promise.resolve(undefined),
  }
  const one = boardList(
    [[400, 1]],
    [
      [201, 6],
      [102, 6],
      [101, 6],
      [98, 12],
    ],
  )
  const answer = await solveCase(one, { solver: cutShort })
  expect(answer).toMatchObject({ status: "unproven", objective: 11, bound: 9 })
  expect(answer.gap).toBeCloseTo(2 / 11, 9)
  expect(answer.notices.join()).toContain("18.18 %")
})
