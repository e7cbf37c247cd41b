import { expect, test } from "vitest"
import { Solving } from "../../src/command/solving.ts"
import { readCase } from "../../src/cutting/index.ts"
import { file, refuses, solved, spawned } from "./run.ts"

const BOARDS = {
  id: "shelf",
  kind: "cut",
  kerf: 2,
  stocks: [{ id: "8 ft", length: 1536, price: 655, available: null }],
  pieces: [{ length: 767, quantity: 2 }],
}

const cases = (...list: readonly object[]): string => file(JSON.stringify({ cases: list }))

test("the same ids come back in order, each with objective, bound and plan, from a process of its own", () => {
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

test("a file without a case gives none", async () => {
  expect(JSON.parse((await solved("cut", cases(), "--json")).out)).toEqual({ cases: [] })
})

test("a case that cannot be met is an answer, not a failure", async () => {
  const tooLong = { ...BOARDS, pieces: [{ length: 1537, quantity: 1 }] }
  const { status, out } = await solved("cut", cases(tooLong))
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
  async (_, given, parts) => {
    const { status, out, err } = await solved("cut", cases(given))
    expect(status).toBe(2)
    expect(out).toBe("")
    expect(err).toMatch(/^pegbook: cut: [^\n]+Accepted: [^\n]+Next: [^\n]+\n$/)
    for (const part of parts) expect(err).toContain(part)
  },
)

test("a file without cases, a file that is not there and two cases of one id are refused", async () => {
  for (const [path, part] of [
    [file("{}"), "has no list cases"],
    [file('{"cases": 3}'), "has cases that are"],
    [file("not JSON"), "is not JSON"],
    [cases(BOARDS, BOARDS), "twice"],
  ] as const) {
    const { status, err } = await solved("cut", path)
    expect(status).toBe(2)
    expect(err).toContain(part)
  }
  refuses(["cut"], "pegbook cut <file.json> [--seconds number] [--language en|fr] [--json]")
})

/** Pieces of so many lengths that no search ends at once. */
const MANY = {
  id: "many",
  kind: "cut",
  kerf: 2,
  stocks: [1536, 2304, 3072, 3840].map((length) => ({
    id: String(length),
    length,
    price: length,
    available: 90,
    cullPermille: 50,
  })),
  pieces: Array.from({ length: 60 }, (_, index) => ({ length: 301 + 17 * index, quantity: 1 + (index % 7) })),
}

test("a list too hard for its time limit has a plan, and says how far from best it may be", async () => {
  const { status, out, err } = await solved("cut", cases(MANY), "--json", "--seconds", "0.1")
  expect([status, err]).toEqual([0, ""])
  const [answer] = JSON.parse(out).cases
  expect(answer.status).toBe("unproven")
  expect(answer.plan.boards.length).toBeGreaterThan(0)
  expect(answer.gap).toBeCloseTo((answer.objective - answer.bound) / answer.objective, 12)
  expect(answer.notices.join(" ")).toContain(`${(answer.gap * 100).toFixed(2)} %`)
})

test("a thread that does not answer in its time is ended, and the next question has a new one", async () => {
  const read = readCase(MANY, "given")
  const easy = readCase(BOARDS, "given")
  if ("problem" in read || "problem" in easy) throw new Error("the cases are good")
  const solving = new Solving()
  expect(await solving.ask({ case: read.case, seconds: -0.99 })).toBeUndefined()
  expect(await solving.ask({ case: easy.case, seconds: 30 })).toMatchObject({ answer: { objective: 655 } })
  solving.stop()
})

test("a time limit that is none is refused", () => {
  for (const text of ["soon", "-1", "1e9"])
    refuses(["cut", cases(BOARDS), `--seconds=${text}`], "--seconds", text)
})
