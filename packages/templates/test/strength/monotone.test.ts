import { type Book, type Definition, openBook } from "@pegbook/engine"
import fc from "fast-check"
import { expect, test } from "vitest"
import { boardwalk } from "../../src/boardwalk/template.ts"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"
import { groundLevelDeck } from "../../src/ground-level-deck/template.ts"
import { shedBase } from "../../src/shed-base/template.ts"

const RUNS = 40
const SEED = 20261125

const BENT = ["bending_ratio", "shear_ratio", "sag_live_ratio", "sag_total_ratio"]
const SEATED = "bearing_ratio"

/** Every line in one piece: a joint that another spacing moves may help or harm, whatever the span does. */
const SKIDS = {
  fixed: { skid_stock: "40 ft" },
  spans: ["support_spacing_max", "skid_spacing_max"],
  share: "joist_spacing",
  counts: ["skid_count", "supports_per_skid"],
  lines: "skid_count",
} as const

const TEMPLATES: readonly (readonly [
  definition: Definition,
  given: {
    readonly fixed: Readonly<Record<string, string>>
    /** Widest spacings of what holds the members up. */
    readonly spans: readonly string[]
    /** Spacing of members side by side. */
    readonly share: string
    /** As long as these are the same, so is what holds them up. */
    readonly counts: readonly string[]
    /** How many lines the joists lie across, in one piece, and hand their load down to. */
    readonly lines?: string
  },
])[] = [
  [gameTablePlatform, SKIDS],
  [shedBase, SKIDS],
  [greenhouseFloor, { ...SKIDS, fixed: { skid_stock: "40 ft" } }],
  [
    groundLevelDeck,
    {
      fixed: { beam_stock: "40 ft" },
      spans: ["support_spacing_max", "beam_spacing_max"],
      share: "joist_spacing",
      counts: ["beam_count", "supports_per_beam"],
      lines: "beam_count",
    },
  ],
  [
    boardwalk,
    {
      fixed: { stringer_stock: "40 ft", platform_length: "30 ft" },
      spans: ["sleeper_spacing_max"],
      share: "stringer_spacing_max",
      counts: ["stringer_count", "sleeper_count"],
    },
  ],
]

const ratios = (book: Book, name: string): readonly number[] =>
  (book.entry(`members.${name}`).readings ?? []).map((reading) => Number(reading?.value))

test.each(TEMPLATES.map((one) => [one[0].id, ...one] as const))(
  `%s: a longer span, a wider spacing or a heavier load never improves a ratio, ${RUNS} runs, seed ${SEED}`,
  (id, definition, { fixed, spans, share, counts, lines }) => {
    console.info(`${id}: ${RUNS} runs, seed ${SEED}`)
    const { book } = openBook(definition)
    const set = (typed: Readonly<Record<string, string>>) => expect(book.editAll(typed).problems).toEqual([])
    const held = () => counts.map((name) => book.entry(name).reading?.value)
    const inches = (least: number, most: number) => fc.integer({ min: least, max: most })
    set(fixed)
    fc.assert(
      fc.property(
        fc.record({ span: inches(30, 66), share: inches(8, 22), live: inches(20, 120), dead: inches(5, 30) }),
        fc.record({ span: inches(1, 40), share: inches(1, 8), live: inches(1, 60), dead: inches(1, 20) }),
        fc.nat(),
        (base, more, which) => {
          const start = {
            ...Object.fromEntries(spans.map((name) => [name, `${base.span} in`])),
            [share]: `${base.share} in`,
            live_load: `${base.live} psf`,
            dead_load: `${base.dead} psf`,
            "design_thresholds.point_load.1": "300 lb",
          }
          set(start)
          const before = new Map([...BENT, SEATED].map((name) => [name, ratios(book, name)]))
          const stood = held()
          const changes: readonly Readonly<Record<string, string>>[] = [
            ...spans.map((name) => ({ [name]: `${base.span + more.span} in` })),
            { [share]: `${base.share + more.share} in` },
            { live_load: `${base.live + more.live} psf` },
            { dead_load: `${base.dead + more.dead} psf` },
            { "design_thresholds.point_load.1": `${300 + 20 * more.live} lb` },
          ]
          const change = changes[which % changes.length] ?? {}
          set({ ...start, ...change })
          const handed = lines === undefined || held()[counts.indexOf(lines)] === stood[counts.indexOf(lines)]
          const same = held().every((count, index) => count === stood[index])
          // Weight on the spans lifts the tip of an overhang, so more of it may lessen what the tip falls.
          const bent = "dead_load" in change ? BENT.filter((name) => name !== "sag_total_ratio") : BENT
          // Three supports in place of two: the middle one really does carry more.
          const compared = same ? [...bent, SEATED] : bent
          for (const name of compared) {
            ratios(book, name).forEach((is, row) => {
              // Joists over two lines in place of three spare the middle one, which took more than its share.
              if (row === 0 && !handed) return
              const was = before.get(name)?.[row] ?? Number.NaN
              expect(
                is,
                `${name}, row ${row + 1}: ${JSON.stringify({ start, change })}`,
              ).toBeGreaterThanOrEqual(was * (1 - 1e-9))
            })
          }
        },
      ),
      { numRuns: RUNS, seed: SEED, endOnFailure: true },
    )
  },
  900_000,
)
