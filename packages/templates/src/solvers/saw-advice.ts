import { lengthInWords } from "./length-in-words.ts"
import type { TimberProblem } from "./timber-problem.ts"

const MOST_SAID = 6

/**
 * Where pieces seem to come out of a length sold and do not, because the saw takes its share: which length does give
 * them. One sentence for each length of piece and length sold.
 */
export function sawAdvice({ demands, rule }: Pick<TimberProblem, "demands" | "rule">): readonly string[] {
  const { kerf, endTrim } = rule
  const said = new Set<string>()
  for (const { size, length, count, stock } of demands) {
    if (length <= 0) continue
    const sold = [...new Set(stock)].sort((a, b) => a - b)
    for (const board of sold) {
      const seems = Math.floor(board / length)
      const takes = seems * (length + kerf) - kerf + 2 * endTrim
      if (seems < 2 || seems > count || takes <= board) continue
      const gives = sold.find((other) => other >= takes)
      const instead =
        gives === undefined
          ? `It takes a board of at least ${lengthInWords(takes)}.`
          : `${lengthInWords(gives)} gives them.`
      said.add(
        `${seems} × ${lengthInWords(length)} of ${size} does not come out of ${lengthInWords(board)}: saw cuts and trimmed ends take ${lengthInWords(takes - seems * length)}. ${instead}`,
      )
    }
  }
  return [...said].slice(0, MOST_SAID)
}
