import type { Column } from "@pegbook/engine"
import { column } from "../columns.ts"
import { ARITHMETIC, GEOMETRY, PS_20, STATICS, USER } from "../sources.ts"
import { POINT_LOAD } from "../sources-actions.ts"
import { CSA_FACTORS, NBC_LOAD_FACTORS, SIZE_FACTORS, STATICS_HANDBOOK } from "../sources-strength.ts"
import { factor } from "../strength/design-factors.ts"
import { ofEach } from "../strength/of-each.ts"
import { type AnyMember, isFloor, NO_POINT, threshold } from "./member.ts"
import { either, FOUND, FOUND_CSA, sizeClass, VALUES } from "./member-values.ts"

/** Columns from the piece itself. */
export function pieceColumns(members: readonly AnyMember[]): readonly Column[] {
  const of = (pick: (member: AnyMember) => string): string => ofEach(members.map(pick))
  return [
    column(
      "member",
      "Member",
      "text",
      of(({ member }) => `"${member}"`),
      "One kind of member a row.",
      ARITHMETIC,
    ),
    column(
      "size",
      "Size",
      "text",
      of(({ size }) => size),
      "As it is sold.",
      USER,
    ),
    column(
      "thickness",
      "Thickness of a ply",
      "length",
      of(({ thickness }) => thickness),
      "As it is planed.",
      PS_20,
    ),
    column(
      "depth",
      "Depth",
      "length",
      of(({ depth }) => depth),
      "As it stands.",
      PS_20,
    ),
    column(
      "plies",
      "Plies",
      "count",
      of(({ plies }) => plies ?? "1"),
      "Pieces that bend together.",
      ARITHMETIC,
    ),
    column("breadth", "Thickness in all", "length", "plies * thickness", "All plies together.", GEOMETRY),
    column(
      "plies_through",
      "Plies that run through",
      "count",
      `plies - ${ofEach(members.map((member) => (isFloor(member) ? (member.interrupted ?? "0") : "0")))}`,
      "Where planks of a beam meet, the others carry the bending alone: the worst such place counts for all of it.",
      GEOMETRY,
    ),
    column(
      "seat",
      "Length of its seat",
      "length",
      of((member) => member.seat ?? member.depth),
      "How much of it lies on its support. Of a post: nothing lies on it.",
      GEOMETRY,
    ),
    column(
      "dead",
      "Own weight of the platform",
      "pressure",
      "dead_load",
      "On every part of the floor.",
      STATICS,
    ),
    column("live", "People and things", "pressure", "live_load", "On some spans, or all.", STATICS),
    column(
      "point_load",
      "One load anywhere on it",
      "force",
      of((member) => member.point ?? (isFloor(member) ? threshold("point_load") : NO_POINT)),
      "A person, a wheel or the leg of a table, in the worst place; in place of the people spread out, not with them. Its neighbours are not taken to help.",
      POINT_LOAD,
    ),
    column(
      "dead_factor",
      "Load factor on dead load",
      "ratio",
      either(factor("dead_load_factor"), "1"),
      "1 in allowable stress design.",
      NBC_LOAD_FACTORS,
    ),
    column(
      "live_factor",
      "Load factor on live load",
      "ratio",
      either(factor("live_load_factor"), "1"),
      "1 in allowable stress design.",
      NBC_LOAD_FACTORS,
    ),
    column(
      "section_modulus",
      "Section modulus",
      "volume",
      `plies_through * thickness * depth ^ 2 / ${factor("section_modulus_divisor")}`,
      "How well the shape resists bending, of the plies that run through. Twice the depth counts four times.",
      STATICS_HANDBOOK,
    ),
    column(
      "thickness_class",
      "Class of thickness",
      "text",
      `IFERROR(${sizeClass("thickness_class")}; "none")`,
      "Thin timber and timbers of 5 in and more are graded by different rules.",
      PS_20,
      SIZE_FACTORS,
    ),
    column(
      "width_class",
      "Width in the name, inches",
      "count",
      `IFERROR(${sizeClass("width")}; 0)`,
      "The size factor goes by it. 0: a size that the tables do not hold.",
      PS_20,
      SIZE_FACTORS,
    ),
    column(
      "sizes",
      "Class of published values",
      "text",
      `IFERROR(${sizeClass("grading")}; "none")`,
      "Where a species is published by width, the row for this width.",
      ...VALUES,
    ),
    column(
      "thin",
      "Counts as thin",
      "yes_no",
      `MIN(breadth; depth) <= ${threshold("thin")}`,
      "In limit states, damp and slits count for thin pieces.",
      CSA_FACTORS,
    ),
    column(
      "found",
      "Row of the published table",
      "count",
      `IF(width_class = 0; 0; ${either(FOUND_CSA, FOUND)})`,
      "0 where the table has no row for this species, grade and size: then there is no answer, and what follows is left blank.",
      ...VALUES,
    ),
  ]
}
