/**
 * What was worked out lately, by what it was worked out from. Bounded: twice `most` at the utmost, and of what was asked for
 * among the last `most` nothing is forgotten.
 */
export class Remembered<Key, Value> {
  readonly #most: number
  #lately = new Map<Key, Value>()
  #before = new Map<Key, Value>()

  constructor(most: number) {
    this.#most = most
  }

  of(key: Key, workOut: (key: Key) => Value): Value {
    const known = this.#lately.get(key)
    if (known !== undefined) return known
    const value = this.#before.get(key) ?? workOut(key)
    if (this.#lately.size >= this.#most) {
      this.#before = this.#lately
      this.#lately = new Map()
    }
    this.#lately.set(key, value)
    return value
  }
}
