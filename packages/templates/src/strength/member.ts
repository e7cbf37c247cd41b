/**
 * A member whose strength is worked out, told by the names of entries that the template has.
 *
 * `size` is a nominal size of `size_classes`; `thickness` and `depth` are one ply's, as it stands.
 */
export interface Member {
  /** Begins every name: "joist" gives joist_fb_adjusted. */
  readonly prefix: string
  /** One of them, for the reader: "Joist". */
  readonly label: string
  readonly size: string
  readonly thickness: string
  readonly depth: string
  /** A count of pieces side by side that bend together. One where it is left out. */
  readonly plies?: string
  /** A plain number on bending strength for members that share a load: the name of an entry. */
  readonly sharing: string
  /** A length: from this depth, 4 in timber takes the size factor of thin timber. Never where it is left out. */
  readonly thinFactorFrom?: string
  /** The table of species in each group. */
  readonly members?: string
  readonly species?: string
  readonly grade?: string
  readonly wet?: string
  readonly incised?: string
}

/** A member's names, with those that were left out. */
export function namesOf(member: Member) {
  return {
    p: member.prefix,
    members: member.members ?? "species_members",
    species: member.species ?? "species",
    grade: member.grade ?? "grade",
    wet: member.wet ?? "wet_service",
    incised: member.incised ?? "incised",
    width: member.plies === undefined ? member.thickness : `${member.plies} * ${member.thickness}`,
  }
}

/** A row's value of a published table, found by a text. */
export const lookUp = (table: string, column: string, by: string, key: string): string =>
  `INDEX(${table}.${column}; MATCH(${by}; ${table}.${key}; 0))`

/** A number of rows that is 0 unless the entry named as `when` is yes. */
export const rowsWhen = (when: string | undefined, rows: string): string =>
  when === undefined ? rows : `IF(${when}; ${rows}; 0)`
