import { describe, expect, test } from "vitest"
import { column, platform } from "../parts-frame/platform.ts"

const verdict = (typed: Record<string, string>, check: string) => platform(typed).entry(check).check

describe("screws", () => {
  // International Building Code 2304.10.5.1 (record d-016): treated wood wants hot-dip zinc, stainless or better; wood screws
  // may not be plated mechanically only. Borate with plain steel only indoors and dry (d-018).
  test.each([
    ["copper quat (ACQ)", "electroplated zinc", "fails"],
    ["copper quat (ACQ)", "mechanically plated zinc", "fails"],
    ["copper azole, CA-B", "hot-dip zinc", "passes"],
    ["copper azole, CA-C", "hot-dip zinc", "passes"],
    ["micronised copper (MCA)", "stainless 304", "passes"],
    ["borate", "plain steel", "fails"],
    ["none, or wood that lasts by itself", "electroplated zinc", "passes"],
  ])("%s with %s: %s", (timber_treatment, screw_coating, expected) => {
    expect(verdict({ timber_treatment, screw_coating }, "fastener_corrosion_check")?.verdict).toBe(expected)
  })

  // Pools and salt water are severe places (record d-029, read); stainless 304 inland and 316 near salt or pool chemicals (record
  // d-032, from memory).
  test.each([
    ["inland", "hot-dip zinc", "passes"],
    ["near salt water", "hot-dip zinc", "fails"],
    ["near salt water", "stainless 304", "fails"],
    ["near salt water", "stainless 316", "passes"],
    ["by a pool or a salted road", "stainless 304", "fails"],
    ["by a pool or a salted road", "stainless 316", "passes"],
    ["always damp, or often wetted", "stainless 304", "passes"],
  ])("%s with %s: %s", (corrosive_site, screw_coating, expected) => {
    expect(verdict({ corrosive_site, screw_coating }, "fastener_corrosion_check")?.verdict).toBe(expected)
  })

  test("a mismatch says why, and what would do", () => {
    const salt = verdict({ corrosive_site: "near salt water" }, "fastener_corrosion_check")
    expect(salt?.advice.join(" ")).toMatch(/stainless 316.*[Ss]alt/)
    const copper = verdict({ screw_coating: "electroplated zinc" }, "fastener_corrosion_check")
    expect(copper?.advice.join(" ")).toMatch(/hot-dip zinc.*copper/)
  })

  // Record n-001: the laboratory's finding for electroplated zinc (d-030) is shown, and the code (d-016) is followed.
  test("the finding that speaks for electroplated zinc is shown and not followed", () => {
    const book = platform()
    expect(column(book, "corrosion_findings.followed")).toEqual(["yes", "yes", "no"])
    expect(String(column(book, "corrosion_findings.finding")[2])).toMatch(/electroplated/)
  })
})

describe("connectors", () => {
  // International Building Code 2304.10.5.1 (record d-017): not less than zinc G185 on treated wood outdoors.
  test.each([
    ["zinc G60 or G90", "fails"],
    ["zinc G185", "passes"],
    ["hot-dip zinc after making", "passes"],
  ])("%s: %s", (connector_coating, expected) => {
    expect(verdict({ connector_coating }, "connector_corrosion_check")?.verdict).toBe(expected)
  })

  // Record d-029: hangers and their nails of the same metal.
  test("stainless screws through zinc ties fail, and so do zinc screws through stainless ties", () => {
    expect(verdict({ screw_coating: "stainless 304" }, "metals_match_check")?.verdict).toBe("fails")
    expect(verdict({ connector_coating: "stainless 304" }, "metals_match_check")?.verdict).toBe("fails")
    const both = { screw_coating: "stainless 316", connector_coating: "stainless 304" }
    expect(verdict(both, "metals_match_check")?.verdict).toBe("passes")
  })
})
