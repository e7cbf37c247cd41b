export interface FormulaPart {
  readonly text: string
  /** The entry that this part names. */
  readonly name?: string
}

/** A text in quotes, or a word: a name, a function, or `table.column`. */
const QUOTE_OR_WORD = /"(?:[^"]|"")*"|[A-Za-z_][A-Za-z0-9_]*(?:\.[A-Za-z0-9_]+)?/g

/**
 * Cuts a formula's text at the names in it, so that they can be pressed. In a table's formula a bare word is first a
 * column of that table.
 */
export function formulaParts(
  formula: string,
  has: (name: string) => boolean,
  table?: string,
): readonly FormulaPart[] {
  const parts: FormulaPart[] = []
  let plain = ""
  let end = 0
  for (const match of formula.matchAll(QUOTE_OR_WORD)) {
    const [word] = match
    const name = [...(table === undefined ? [] : [`${table}.${word}`]), word].find(has)
    plain += formula.slice(end, match.index)
    end = match.index + word.length
    if (name === undefined) {
      plain += word
      continue
    }
    if (plain !== "") parts.push({ text: plain })
    plain = ""
    parts.push({ text: word, name })
  }
  plain += formula.slice(end)
  if (plain !== "") parts.push({ text: plain })
  return parts
}
