import type { Source } from "@pegbook/engine"

/** Citations of decking, of the wood itself, and of what it weighs. What several areas share is in `sources.ts`. */

/** Shrinkage from green to oven-dry, across the grain, by the record of the species. */
export function shrinkageOf(record: string): Source {
  return {
    kind: "handbook",
    title: "Wood Handbook, FPL-GTR-190",
    place: "table 4-3, shrinkage from green to oven-dry",
    origin: "read",
    record,
  }
}

export const SHRINKAGE_RECALLED: Source = {
  kind: "handbook",
  title: "Wood Handbook, FPL-GTR-190",
  place: "table 4-3, rows for loblolly pine and white spruce",
  origin: "memory",
  note: "agrees with the change coefficients of table 13-5 by the link of the two tables (f-022)",
}

export const SHRINKAGE_RULE: Source = {
  kind: "handbook",
  title: "Wood Handbook, chapter on moisture and wood",
  place: "shrinkage at a moisture between green and oven-dry: in proportion, from fibre saturation down",
  origin: "memory",
  note: "the change coefficients of table 13-5 (f-009 to f-014) say the same between 6 % and 14 %",
}

export const FLAT_SAWN: Source = {
  kind: "common_practice",
  title: "Common practice, no source",
  note: "decking is mostly flat-sawn, so its width shrinks along the rings, the greater of the two shrinkages",
}

export const SPECIFIC_GRAVITY: Source = {
  kind: "handbook",
  title: "Wood Handbook, specific gravity at 12 % moisture",
  place: "f-025 to f-029",
  origin: "memory",
  record: "f-026",
}

export const WOOD_DENSITY: Source = {
  kind: "handbook",
  title: "University forestry page: density of wood = density of water × specific gravity × (1 + moisture)",
  origin: "read",
  record: "f-024",
}

export const TREATED_WEIGHT: Source = {
  kind: "measured",
  title: "A roofing reference page: treated southern pine, fresh 69.8 and dry 40.1 lb per cubic foot",
  origin: "read",
  record: "f-041",
  note: "for the heaviest of the southern pines",
}

export const TREATING_WATER: Source = {
  kind: "measured",
  title: "A roofing reference page: water that treating puts into wood",
  place: "4 gallons, or 32 lb, a cubic foot",
  origin: "read",
  record: "f-043",
}

export const GAP_LAID_WET: Source = {
  kind: "common_practice",
  title: "A trade blog on laying boards wet",
  place: "laid tight, gaps of 1/4 in to 3/8 in open as they dry",
  origin: "read",
  record: "f-048",
}

export const GAP_LAID_DRY: Source = {
  kind: "common_practice",
  title: "Advice of a trade association, quoted in a forum",
  place: "1/8 in to 1/4 in between seasoned boards; a thick nail as spacer",
  origin: "read",
  record: "f-049",
}

export const DECKING_SPANS: Source = {
  kind: "standard",
  title: "International Residential Code, table R507.7, as one city adopted it",
  edition: "2018 numbering",
  place: "joist spacing under boards laid square across",
  origin: "read",
  record: "decking_max_joist_spacing",
}

export const DECK_SCREWS: Source = {
  kind: "common_practice",
  title: "How-to article on screws for a deck",
  place: "two screws at every joist",
  origin: "read",
  record: "d-051",
}
