import type { SolverGiven } from "@pegbook/engine"
import { expect, test } from "vitest"
import { solveMemberCurves } from "../../src/solvers/member-actions.ts"

const SPAN = 3
const LOAD = 7

/** Joists over three supports, each carrying a strip one wide, with a stiffness of 1. */
function curves() {
  const columns: Readonly<Record<string, readonly number[]>> = {
    places: [0, SPAN, 2 * SPAN],
    "members.breadth": [12],
    "members.depth": [1],
    "members.dead": [0],
    "members.live": [LOAD],
    "members.dead_factor": [1],
    "members.live_factor": [1],
    "members.point_load": [0],
  }
  const given: SolverGiven = {
    number: (name) => (name === "whole" ? 2 * SPAN : 1),
    text: () => "",
    yes: () => false,
    column: (name) => columns[name] ?? [1],
  }
  const members = [{ member: "joists", supports: { at: "places" }, length: "whole", carries: "strip" }]
  return solveMemberCurves(members)(given).rows.map(({ position, moment, sag }) => ({
    position: Number(position),
    moment: Number(moment),
    sag: Number(sag),
  }))
}

// Civil Engineering Formulas, table 2.1 (record continuous_beam_coefficients, read): 0.0703 w L² between the supports and
// 0.00542 w L⁴/(E I). Where they are, from memory: 3/8 and 0.4215 of a span from the outer support.
test("two equal spans under an even load: the greatest moment and sag are points, where they truly are", () => {
  const first = curves().filter(({ position }) => position <= SPAN)
  const moment = first.reduce((most, one) => (one.moment > most.moment ? one : most))
  expect(moment.position / SPAN).toBeCloseTo(3 / 8, 9)
  expect(moment.moment / (LOAD * SPAN ** 2)).toBeCloseTo(0.0703, 4)
  const sag = first.reduce((most, one) => (one.sag > most.sag ? one : most))
  expect(sag.position / SPAN).toBeCloseTo(0.4215, 4)
  expect(sag.sag / (LOAD * SPAN ** 4)).toBeCloseTo(0.00542, 5)
})
