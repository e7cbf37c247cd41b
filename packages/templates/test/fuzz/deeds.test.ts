import { type Book, type Definition, type Moved, openBook, readDocument } from "@pegbook/engine"
import fc from "fast-check"
import { afterAll, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"
import { legalInputs } from "../helpers/random-inputs.ts"

/** `npm run fuzz` tries a hundred thousand. */
const DEEDS = Number(process.env.PEGBOOK_FUZZ ?? 800)
const EACH = Math.ceil(DEEDS / TEMPLATES.length)
const SEED = 20261125
/** Opening again, from scratch and from what was saved, takes as long as a dozen edits. */
const REOPENED_ONE_IN = 40

const told = { edits: 0, refused: 0, undone: 0, redone: 0, reopened: 0 }
afterAll(() => {
  console.info(
    `random deeds over ${TEMPLATES.length} templates: ${told.edits + told.refused + told.undone + told.redone} (${told.edits} edits, ${told.refused} refused, ${told.undone} undone, ${told.redone} done again); reopened ${told.reopened} times; seed ${SEED}`,
  )
})

type Deed =
  | { readonly kind: "edit"; readonly name: string; readonly text: string }
  | { readonly kind: "undo" | "redo" }

const NONSENSE = ["", "0", "-1", "1e99", "wide", "=1/0", "3 kg", "1/0", "9".repeat(60), "½", "4' 6 7/8\""]

/** Inputs with legal texts mostly, any name with nonsense at times, and steps back and forth. */
function deedsOf(definition: Definition): fc.Arbitrary<Deed> {
  const { book } = openBook(definition)
  const legal = legalInputs(definition).chain((typed) =>
    fc.constantFrom(...Object.entries(typed)).map(([name, text]): Deed => ({ kind: "edit", name, text })),
  )
  const odd = fc
    .tuple(fc.constantFrom(...book.names()), fc.constantFrom(...NONSENSE))
    .map(([name, text]): Deed => ({ kind: "edit", name, text }))
  return fc.oneof(
    { weight: 6, arbitrary: legal },
    { weight: 2, arbitrary: odd },
    { weight: 4, arbitrary: fc.constant<Deed>({ kind: "undo" }) },
    { weight: 2, arbitrary: fc.constant<Deed>({ kind: "redo" }) },
  )
}

/** What moved, told the other way round. */
function reversed(moved: readonly Moved[]): readonly Moved[] {
  return moved.map(({ old, new: now, ...at }) => ({ ...at, old: now, new: old }))
}

function values(book: Book): unknown {
  return book.names().map((name) => {
    const { reading, readings, state } = book.entry(name)
    return [name, state, reading?.text, readings?.map((one) => one?.text)]
  })
}

function content(book: Book): unknown {
  const { history: _, ...rest } = book.document()
  return rest
}

function reopens(definition: Definition, book: Book): void {
  const { document } = readDocument(JSON.parse(JSON.stringify(book.document())))
  if (document === undefined) throw new Error("what was saved cannot be read")
  const again = openBook(definition, { document }).book
  // Opened again, all is worked out from scratch.
  expect(values(again)).toEqual(values(book))
  expect(again.document()).toEqual(book.document())
  told.reopened += 1
}

test.each(TEMPLATES.map((definition) => [definition.id, definition] as const))(
  `%s: ${EACH} edits, undos and redos, each undone exactly, kept and opened alike`,
  { timeout: 14_400_000 },
  (_, definition) => {
    const { book } = openBook(definition, { now: () => 0 })
    const made: { readonly moved: readonly Moved[]; readonly before: unknown }[] = []
    const undone: typeof made = []
    let tried = 0
    fc.assert(
      fc.property(deedsOf(definition), (deed) => {
        tried += 1
        if (deed.kind === "edit") {
          const before = content(book)
          const { accepted, moved, problems } = book.edit(deed.name, deed.text)
          if (!accepted) {
            told.refused += 1
            expect(problems.length).toBeGreaterThan(0)
            expect(content(book)).toEqual(before)
          } else if (JSON.stringify(content(book)) !== JSON.stringify(before)) {
            told.edits += 1
            made.push({ moved, before })
            undone.length = 0
          } else told.edits += 1
        } else {
          const [from, to] = deed.kind === "undo" ? [made, undone] : [undone, made]
          const step = from.pop()
          if (step === undefined) return
          told[deed.kind === "undo" ? "undone" : "redone"] += 1
          const held = content(book)
          expect(deed.kind === "undo" ? book.undo() : book.redo()).toBeDefined()
          expect(book.moved()).toEqual(reversed(step.moved))
          expect(content(book)).toEqual(step.before)
          to.push({ moved: book.moved(), before: held })
        }
        if (tried % REOPENED_ONE_IN === 0) reopens(definition, book)
      }),
      { numRuns: EACH, seed: SEED, endOnFailure: true },
    )
    reopens(definition, book)
  },
)
