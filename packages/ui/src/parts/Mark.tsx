import type { Verdict } from "@pegbook/engine"
import { createMemo, type JSX } from "solid-js"

/** Each verdict has a shape of its own, so that colour is never the only sign. */
const SHAPES: Readonly<Record<Verdict, () => JSX.Element>> = {
  passes: () => (
    <>
      <circle cx="10" cy="10" r="8.5" />
      <path d="M6 10.500l2.800 2.800 5.400-6" />
    </>
  ),
  near: () => (
    <>
      <path d="M10 2.200 18.500 17.500h-17z" />
      <path d="M10 8v4.500M10 14.700v.600" />
    </>
  ),
  fails: () => (
    <>
      <path d="M6.300 1.500h7.400l4.800 4.800v7.400l-4.800 4.800H6.300l-4.800-4.800V6.300z" />
      <path d="M6.500 6.500l7 7M13.500 6.500l-7 7" />
    </>
  ),
  outside_table: () => (
    <>
      <path d="M2 6V2h16v4M2 14v4h16v-4" />
      <path d="M1 10h12M10 7l3 3-3 3" />
    </>
  ),
  needs_entry: () => (
    <>
      <path d="M2 4h16v12H2z" stroke-dasharray="3 2" />
      <path d="M10 7v6" />
    </>
  ),
  no_verdict: () => (
    <>
      <circle cx="10" cy="10" r="8.5" stroke-dasharray="3 2.500" />
      <path d="M6.500 10h7" />
    </>
  ),
}

/** The mark beside a verdict's words; the words say it, so the mark is hidden from readers of the page. */
export function Mark(props: { readonly verdict: Verdict }) {
  const verdict = createMemo(() => props.verdict)
  return (
    <svg class={`mark mark-${verdict()}`} viewBox="0 0 20 20" aria-hidden="true">
      {SHAPES[verdict()]()}
    </svg>
  )
}
