import { expect, test } from "vitest"
import { solveCase } from "../../src/cutting/index.ts"
import { boardList, order, sheets, skids } from "./cases.ts"

// Facts of the trade: common practice, no source. Lengths in sixteenths of an inch: 8 ft are 1536.

test("a kerf is spent between pieces only: two of 47 15/16 in come out of 8 ft with a kerf of 1/8 in, two of 48 in do not", async () => {
  const two = (length: number) => boardList([[1536, 1]], [[length, 2]], { kerf: 2 })
  expect((await solveCase(two(767))).objective).toBe(1)
  expect((await solveCase(two(768))).objective).toBe(2)
})

test("two pieces of 48 in come out of a sheet of 96 in, since the gaps shorten them", async () => {
  // One course 16 ft long: 48 in, 96 in, 48 in, from two sheets; the neighbour 96 in and 96 in from two more.
  expect(await solveCase(sheets())).toMatchObject({ status: "proven", objective: 4, bound: 4 })
})

test("sheets made short for spacing need joints that may lie off the centre of a joist", async () => {
  const short = {
    platform: { acrossJoists: 3072, alongJoists: 768 },
    courses: [768],
    sheet: { length: 1534, width: 768 },
  }
  // 95 7/8 in: an end piece to the joint on the joist at 8 ft, less half a gap of 1/8 in, is 95 15/16 in.
  expect((await solveCase(sheets(short))).objective).toBe(3)
  expect((await solveCase(sheets({ ...short, jointTolerance: 1 }))).objective).toBe(2)
})

test("off-cuts that are owned cost nothing and are used first", async () => {
  const answer = await solveCase(
    boardList(
      [
        [1536, 655],
        [900, 0, 2],
      ],
      [[880, 3]],
    ),
  )
  expect(answer).toMatchObject({ status: "proven", objective: 655 })
})

test("boards bought over, for those that turn out bad, count in the price", async () => {
  const stocks = [{ id: "s", length: 1000, price: 100, available: null, cullPermille: 50 }]
  expect((await solveCase(boardList([], [[900, 20]], { stocks }))).objective).toBe(2100)
  expect((await solveCase(boardList([], [[900, 21]], { stocks }))).objective).toBe(2300)
})

test("joints of neighbouring skids are on different supports", async () => {
  const { plan } = await solveCase(skids())
  if (plan?.kind !== "splice") throw new Error("no plan")
  const [first = [], second = []] = plan.joints
  expect(first.filter((at) => second.includes(at))).toEqual([])
})

test("a box is bought where more than is needed costs less, and a delivery counts once", async () => {
  expect((await solveCase(order())).objective).toBe(1200)
  const suppliers = [{ id: "A", deliveryFee: 500, taxBasisPoints: 825 }, { id: "B" }]
  // 14.00 at B; 12.00 + 5.00 + 0.99 tax at A.
  expect((await solveCase(order({ suppliers }))).objective).toBe(1400)
})

test("tax is rounded half up on each invoice", async () => {
  const suppliers = [
    { id: "A", taxBasisPoints: 500 },
    { id: "B", taxBasisPoints: 500 },
  ]
  const offers = [
    { line: "screws", supplier: "A", packSize: 100, breaks: [{ fromPacks: 1, pricePerPack: 1210 }] },
  ]
  // 5 % of 12.10 is 0.605.
  expect((await solveCase(order({ suppliers, offers }))).objective).toBe(1271)
})
