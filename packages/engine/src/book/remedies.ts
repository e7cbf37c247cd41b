import type { CheckEntry, Remedy } from "../definition/entry.ts"
import { typedOver } from "./overrides.ts"
import { stepSize, stepsFrom } from "./steps.ts"
import { isFailing, type Trial } from "./trial.ts"
import type { RemedyView } from "./views.ts"

/** Each one is a recalculation; with doubling and halving, enough for a change of half a million steps. */
const MOST_TRIALS = 40

/** The smallest change of each input named that brings a check to pass, found by trying. None where it passes. */
export function findRemedies(check: CheckEntry, trial: Trial): readonly RemedyView[] {
  trial.type({})
  if (!isFailing(trial.verdict(check.name))) return []
  const before = new Set(trial.failing())
  return once(check.remedies ?? []).flatMap((remedy) => {
    trial.type({})
    const from = trial.reading(remedy.input)
    const typed = smallestChange(check, remedy, trial)
    if (typed === undefined || trial.type({ [remedy.input]: typed }) !== undefined) return []
    return [
      {
        input: remedy.input,
        label: trial.items.get(remedy.input)?.entry.label ?? remedy.input,
        from,
        to: trial.reading(remedy.input),
        typed,
        newlyFails: trial.failing().filter((name) => !before.has(name)),
      },
    ]
  })
}

/** A check that is put together from several parts may name one change for each of them. */
function once(remedies: readonly Remedy[]): readonly Remedy[] {
  const way = ({ input, toward, step }: Remedy) => `${toward} ${input} ${step}`
  return remedies.filter((one, place) => remedies.findIndex((other) => way(other) === way(one)) === place)
}

/** What to type for it; nothing where no change that was tried makes the check pass. */
function smallestChange(check: CheckEntry, remedy: Remedy, trial: Trial): string | undefined {
  const { input, toward } = remedy
  const passes = (typed: string): boolean => {
    if (trial.type({ [input]: typed }) !== undefined) return false
    const verdict = trial.verdict(check.name)
    return verdict === "passes" || verdict === "near"
  }
  const over = typedOver(input, trial.items)
  const values = trial.values(input)
  const [from] = values
  if (over === undefined || from === undefined || values.length > 1) return undefined
  if (typeof from === "boolean") {
    const other = toward === "more" ? "yes" : "no"
    return from === (toward === "more") || !passes(other) ? undefined : other
  }
  if (typeof from === "string") {
    const choices = over.entry.kind === "input" ? (over.entry.choices ?? []) : []
    const here = choices.indexOf(from)
    if (here < 0) return undefined
    const others = toward === "more" ? choices.slice(here + 1) : choices.slice(0, here).reverse()
    return others.slice(0, MOST_TRIALS).find(passes)
  }
  const size = stepSize(remedy.step ?? "1", over.entry.measure, trial.system)
  if (size === undefined) return undefined
  const steps = stepsFrom(over.entry, from, size, toward, trial.system)
  const count = fewestSteps(steps.most, (away) => passes(steps.text(away)))
  return count === undefined ? undefined : steps.text(count)
}

/** Doubles until it passes, then halves the gap: the fewest steps that pass where more steps pass too. */
function fewestSteps(most: number, passes: (steps: number) => boolean): number | undefined {
  let tried = 0
  let failing = 0
  let passing: number | undefined
  for (let steps = 1; failing < most && tried < MOST_TRIALS; steps = Math.min(steps * 2, most), tried++) {
    if (passes(steps)) {
      passing = steps
      break
    }
    failing = steps
  }
  if (passing === undefined) return undefined
  for (; passing - failing > 1 && tried < MOST_TRIALS; tried++) {
    const middle = Math.floor((failing + passing) / 2)
    if (passes(middle)) passing = middle
    else failing = middle
  }
  return passing
}
