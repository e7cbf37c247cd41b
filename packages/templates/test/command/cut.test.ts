import { expect, test } from "vitest"
import { file, refuses, spawned } from "./run.ts"

const BOARDS = {
  id: "shelf",
  kind: "cut",
  kerf: 2,
  stocks: [{ id: "8 ft", length: 1536, price: 655, available: null }],
  pieces: [{ length: 767, quantity: 2 }],
}

const cases = (...list: readonly object[]): string => file(JSON.stringify({ cases: list }))

test("the same ids come back in order, each with objective, bound and plan", () => {
  const { status, out, err } = spawned("cut", cases(BOARDS, { ...BOARDS, id: "none", pieces: [] }), "--json")
  expect(err).toBe("")
  expect(status).toBe(0)
  expect(JSON.parse(out)).toMatchObject({
    cases: [
      {
        id: "shelf",
        objective: 655,
        bound: 655,
        plan: {
          boards: [{ stock: "8 ft", count: 1, pieces: [767, 767] }],
          buy: [{ stock: "8 ft", quantity: 1 }],
        },
      },
      { id: "none", objective: 0, bound: 0, plan: { boards: [], buy: [] } },
    ],
  })
})

test("a file without a case gives none", () => {
  expect(JSON.parse(spawned("cut", cases(), "--json").out)).toEqual({ cases: [] })
})

test("a case that cannot be met is an answer, not a failure", () => {
  const tooLong = { ...BOARDS, pieces: [{ length: 1537, quantity: 1 }] }
  const { status, out } = spawned("cut", cases(tooLong))
  expect(status).toBe(0)
  expect(out).toContain("There is no plan.")
  expect(out).toContain("a board of 1537 or longer to buy")
})

test.each<[string, object, readonly string[]]>([
  [
    "no kind",
    { ...BOARDS, kind: undefined },
    ["shelf", "kind", "missing", '"cut", "sheet", "splice", "buy"'],
  ],
  ["half a unit", { ...BOARDS, kerf: 1.5 }, ["shelf", "kerf", "1.5", "a whole number"]],
  ["less than nothing", { ...BOARDS, kerf: -1 }, ["shelf", "kerf", "-1", "no less than 0"]],
  [
    "a text for a number",
    { ...BOARDS, pieces: [{ length: "8 ft", quantity: 1 }] },
    ["pieces[0].length", "8 ft", "number"],
  ],
  ["a list for a case", [], ["cases[0]", "an object"]],
  [
    "one name twice",
    { ...BOARDS, stocks: [...BOARDS.stocks, ...BOARDS.stocks] },
    ["stocks[1].id", "no other"],
  ],
])(
  "%s is refused in one line: case, field, what was given, what is accepted, what next",
  (_, given, parts) => {
    const { status, out, err } = spawned("cut", cases(given))
    expect(status).toBe(2)
    expect(out).toBe("")
    expect(err).toMatch(/^pegbook: cut: [^\n]+Accepted: [^\n]+Next: [^\n]+\n$/)
    for (const part of parts) expect(err).toContain(part)
  },
)

test("a file without cases, a file that is not there and two cases of one id are refused", () => {
  for (const [path, part] of [
    [file("{}"), "has no list cases"],
    [file('{"cases": 3}'), "has cases that are"],
    [file("not JSON"), "is not JSON"],
    [cases(BOARDS, BOARDS), "twice"],
  ] as const) {
    const { status, err } = spawned("cut", path)
    expect(status).toBe(2)
    expect(err).toContain(part)
  }
  refuses(["cut"], "pegbook cut <file.json> [--json]")
})
