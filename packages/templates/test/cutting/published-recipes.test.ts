import { expect, test } from "vitest"
import { heuristicAnswer, solveCase } from "../../src/cutting/index.ts"
import { boardList } from "./cases.ts"

// Boards at a price of 1: the objective is their number, as in the bin packing of the literature.

test("the worst case of first-fit decreasing, 11 against 9", async () => {
  // D. S. Johnson, A. Demers, J. D. Ullman, M. R. Garey, R. L. Graham, "Worst-case performance bounds for simple
  // one-dimensional packing algorithms", SIAM Journal on Computing 3 (1974): pieces of 1/2 + e, 1/4 + 2e, 1/4 + e and
  // 1/4 - 2e, 6, 6, 6 and 12 of them, fill 9 bins exactly, and first-fit decreasing takes 11. Recipe from memory; the
  // optimum follows: the pieces add up to 9 boards.
  const one = boardList(
    [[400, 1]],
    [
      [201, 6],
      [102, 6],
      [101, 6],
      [98, 12],
    ],
  )
  expect(await solveCase(one)).toMatchObject({ status: "proven", objective: 9, bound: 9 })
  expect(heuristicAnswer(one).objective).toBe(11)
})

test.each([2, 5, 14])(
  "the worst case of first fit: %i boards, each with a half, a third and a seventh",
  async (boards) => {
    // The recipe 1/2 + e, 1/3 + e, 1/7 + e of the same authors (from memory): one of each fits a bin, and no bin holds two
    // halves, so the optimum is the number of halves.
    const one = boardList(
      [[4200, 1]],
      [
        [2101, boards],
        [1401, boards],
        [601, boards],
      ],
    )
    expect(await solveCase(one)).toMatchObject({ status: "proven", objective: boards })
  },
)

test("triplets: each board of 1000 is filled exactly by three pieces, and the optimum is a third of them", async () => {
  // E. Falkenauer, "A hybrid grouping genetic algorithm for bin packing", Journal of Heuristics 2 (1996), class t60: a
  // piece of 380 to 490, another of 250 up to half the rest, and the rest (recipe from memory). Ours are drawn from a seed.
  let state = 20_251
  const draw = (least: number, most: number): number => {
    state = (state * 16_807) % 2_147_483_647
    return least + (state % (most - least + 1))
  }
  const pieces = Array.from({ length: 12 }, () => {
    const first = draw(380, 490)
    const second = draw(250, Math.floor((1000 - first) / 2))
    return [first, second, 1000 - first - second]
  }).flat()
  const one = boardList(
    [[1000, 1]],
    pieces.map((length) => [length, 1]),
  )
  expect(await solveCase(one)).toMatchObject({ status: "proven", objective: 12, bound: 12 })
})
