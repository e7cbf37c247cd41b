import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import pixelmatch from "pixelmatch"
import { PNG } from "pngjs"
import { root } from "../files.ts"

const FOLDER = join(root, "tests", "journeys", "references")
const HOW_TO_ACCEPT = "If the new picture is right, accept it: npm run references"

/** `npm run references` sets it: what is seen becomes what is kept. */
const accepting = process.env.PEGBOOK_REFERENCES === "accept"

/** How far two pixels' colours may be apart, of black and white, and still count as one colour. */
const COLOUR = 0.15
/** A line that moved fills more of a square of this many pixels than another machine's smoothing of edges does. */
const SQUARE = 16
const MOST_IN_A_SQUARE = 20

/** Grey is enough to tell lines apart by, and a third of the size. */
const grey = (image: PNG): Buffer => PNG.sync.write(image, { colorType: 0 })

/** How many pixels of one square differ, where the most do; pictures of two sizes differ altogether. */
export function difference(was: PNG, is: PNG): { readonly pixels: number; readonly shown?: PNG } {
  const { width, height } = was
  if (is.width !== width || is.height !== height) return { pixels: Number.POSITIVE_INFINITY }
  const shown = new PNG({ width, height })
  const pixels = pixelmatch(was.data, is.data, shown.data, width, height, {
    threshold: COLOUR,
    windowSize: SQUARE,
  })
  return { pixels, shown }
}

export const differs = (was: PNG, is: PNG): boolean => difference(was, is).pixels > MOST_IN_A_SQUARE

/** Pictures held against those kept in `references/`, all those whose names begin with one prefix. */
export class References {
  readonly #prefix: string
  readonly #complaints: string[] = []
  readonly #seen = new Set<string>()
  #folder: string | undefined

  constructor(prefix: string) {
    this.#prefix = prefix
    mkdirSync(FOLDER, { recursive: true })
  }

  compare(name: string, taken: Buffer): void {
    const file = `${this.#prefix}${name}.png`
    this.#seen.add(file)
    const kept = join(FOLDER, file)
    // As it would be kept, so that a picture is compared with its like.
    const is = PNG.sync.read(grey(PNG.sync.read(taken)))
    const was = existsSync(kept) ? PNG.sync.read(readFileSync(kept)) : undefined
    if (was !== undefined && !differs(was, is)) return
    if (accepting) {
      writeFileSync(kept, grey(is))
      return
    }
    this.#folder ??= mkdtempSync(join(tmpdir(), "pegbook-references-"))
    writeFileSync(join(this.#folder, `new-${file}`), grey(is))
    if (was === undefined) {
      this.#complaints.push(`${file} is not among the references`)
      return
    }
    const { pixels, shown } = difference(was, is)
    if (shown === undefined) {
      this.#complaints.push(`${file} was ${was.width} by ${was.height} and is ${is.width} by ${is.height}`)
      return
    }
    writeFileSync(join(this.#folder, `difference-${file}`), PNG.sync.write(shown))
    this.#complaints.push(`${file} differs by ${pixels} pixels of a square of ${SQUARE} by ${SQUARE}`)
  }

  /** What is not as it was kept, with where to look and what to do; empty when all is. */
  complaints(): readonly string[] {
    const stale = readdirSync(FOLDER).filter((file) => file.startsWith(this.#prefix) && !this.#seen.has(file))
    if (accepting) {
      for (const file of stale) rmSync(join(FOLDER, file))
      return []
    }
    const all = [...this.#complaints, ...stale.map((file) => `${file} is kept, but nothing is drawn for it`)]
    if (all.length === 0) return []
    const look = this.#folder === undefined ? [] : [`New pictures and differences are in ${this.#folder}`]
    return [...all, ...look, HOW_TO_ACCEPT]
  }
}
