import { spawnSync } from "node:child_process"
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { expect, onTestFinished, vi } from "vitest"
import { main } from "../../src/command/main.ts"

export const COMMAND = fileURLToPath(new URL("../../../../tools/pegbook.mjs", import.meta.url))

export interface Ran {
  readonly status: number | null
  readonly out: string
  readonly err: string
}

/** These wait for proofs unless they are told not to. */
const PROVING = new Set(["calc", "why", "export"])

const absent = () => Promise.reject(new Error("screens are not here: run it with spawned()"))
const NO_SCREENS = { page: absent, pdf: absent, noPdf: () => undefined }

/** Runs the headless command here, with the plans made at once: what it prints, and what its exit status would be. */
export function pegbook(...args: string[]): Ran {
  const { written, restore } = listen()
  try {
    const given = PROVING.has(args[0] ?? "") ? [...args, "--seconds=0"] : args
    const status = main(given, NO_SCREENS)
    if (status instanceof Promise) throw new Error("this command waits for a solver: await solved()")
    return { status, ...written }
  } finally {
    restore()
  }
}

/** Runs it here and waits for what its solver finds. */
export async function solved(...args: string[]): Promise<Ran> {
  const { written, restore } = listen()
  try {
    const status = await main(args, NO_SCREENS)
    return { status, ...written }
  } finally {
    restore()
  }
}

/** Keeps what would be printed. */
function listen() {
  const written = { out: "", err: "" }
  const keep =
    (to: "out" | "err") =>
    (part: unknown): boolean => {
      written[to] += String(part)
      return true
    }
  const spies = [
    vi.spyOn(process.stdout, "write").mockImplementation(keep("out")),
    vi.spyOn(process.stderr, "write").mockImplementation(keep("err")),
  ]
  const restore = (): void => {
    for (const spy of spies) spy.mockRestore()
  }
  return { written, restore }
}

/** Runs it in a process of its own, as a person would. */
export function spawned(...args: string[]): Ran {
  const ran = spawnSync(process.execPath, [COMMAND, ...args], { encoding: "utf8", maxBuffer: 100_000_000 })
  return { status: ran.status, out: ran.stdout, err: ran.stderr }
}

/** The one object that `calc --json` prints, loosely typed: the test is a stranger to the code that printed it. */
export interface Printed {
  readonly template: string
  readonly quantities: Readonly<
    Record<
      string,
      {
        value: unknown
        unit: string
        text: string
        kind: string
        formula?: string
        why: string
        sources: unknown[]
      }
    >
  >
  readonly tables: Readonly<
    Record<string, Readonly<Record<string, { value: unknown; unit: string; text: string } | null>>[]>
  >
  readonly checks: Readonly<
    Record<string, { verdict: string; ratio?: number; demand?: { value: number }; limit?: { value: number } }>
  >
  readonly problems: readonly { code: string; says: string; next: string }[]
}

export function calcJson(...args: string[]): Printed {
  const { status, out, err } = pegbook("calc", ...args, "--json")
  expect(err).toBe("")
  expect(status).toBe(0)
  return JSON.parse(out) as Printed
}

/** Expects exit status 2, nothing on standard output, and one line on standard error with each of these in it. */
export function refuses(args: readonly string[], ...parts: readonly (string | RegExp)[]): void {
  const { status, out, err } = pegbook(...args)
  expect(err).toMatch(/^pegbook: [^\n]+\n$/)
  expect(out).toBe("")
  expect(status).toBe(2)
  for (const part of parts) expect(err).toMatch(part instanceof RegExp ? part : new RegExp(literally(part)))
}

function literally(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")
}

/** A file with this text, gone after the test. */
export function file(text: string, name = "given.json"): string {
  const folder = mkdtempSync(join(tmpdir(), "pegbook-command-"))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}
