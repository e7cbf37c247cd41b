import { openBook } from "@pegbook/engine"
import { expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

/**
 * The whole sheet of each template as it opens, in both systems of units. A change here is a change of what
 * people read: review it like prose. `npx vitest run packages/templates/test/golden -u` writes the files anew.
 */
test.each(TEMPLATES.map((definition) => [definition.id, definition] as const))(
  "%s",
  async (id, definition) => {
    const { book } = openBook(definition)
    for (const system of ["us", "metric"] as const) {
      book.showIn(system)
      const lines = book.names().map((name) => {
        const { kind, reading, readings, check, report, typed, state } = book.entry(name)
        if (check !== undefined) {
          const held = `${check.demand?.text ?? "-"} against ${check.limit?.text ?? "-"}`
          return `${name} (${kind}): ${check.verdict}, ${held}${check.advice.map((one) => `\n    ${one}`).join("")}`
        }
        if (report !== undefined && readings === undefined) {
          return `${name} (${kind}): ${report.method}; ${report.unmet.join(" ") || "nothing unmet"}`
        }
        const text = readings?.map((one) => one?.text ?? "-").join("; ") ?? reading?.text ?? typed ?? state
        return `${name} (${kind}): ${text}`
      })
      await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot(`${id}.${system}.txt`)
    }
  },
)
