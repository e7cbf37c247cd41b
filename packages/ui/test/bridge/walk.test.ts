import { expect, test } from "vitest"
import { addressOf, readAddress, tableAndColumn } from "../../src/bridge/walk.ts"

test("an address leads back to where it was made", () => {
  for (const at of ["joist_count", "supports.dig", undefined]) {
    const step = at === undefined ? { screen: "worksheet" as const } : { screen: "worksheet" as const, at }
    expect(readAddress(addressOf(step))).toEqual(step)
  }
  for (const screen of ["start", "drawings", "compare"] as const)
    expect(readAddress(addressOf({ screen }))).toEqual({ screen })
})

test("an address that is not understood leads to the worksheet", () => {
  for (const hash of ["", "#", "#/elsewhere", "#/worksheet/<script>", "#/worksheet/a/b"]) {
    expect(readAddress(hash), hash).toEqual({ screen: "worksheet" })
  }
})

test("a column's name is cut at its table", () => {
  expect(tableAndColumn("supports.dig")).toEqual({ table: "supports", column: "dig" })
  expect(tableAndColumn("joist_count")).toEqual({ table: "joist_count" })
})
