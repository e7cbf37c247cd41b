/** The middle one of some numbers. */
export function middleOf(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN
}

/** The middle of the times, in milliseconds, that one call takes. */
export function median(times: number, run: (index: number) => void): number {
  return middleOf(
    Array.from({ length: times }, (_, index) => {
      const start = performance.now()
      run(index)
      return performance.now() - start
    }),
  )
}
