import { type PublishedValue, published } from "./published-value.ts"

/** Timber, panels, boards, concrete, tiles, net and the game. */
export const timberAndSurface: readonly PublishedValue[] = [
  published("f-034", "Tabulation of PS 20, dressed 2x4", "C", "dressed_sizes.thickness", "1.5 in", {
    row: ["dressed_sizes.nominal", "2x4"],
  }),
  published("f-034", "Tabulation of PS 20, dressed 2x4", "C", "dressed_sizes.depth", "3.5 in", {
    row: ["dressed_sizes.nominal", "2x4"],
  }),
  published("f-035", "Tabulation of PS 20, dressed 2x6", "C", "dressed_sizes.thickness", "1.5 in", {
    row: ["dressed_sizes.nominal", "2x6"],
  }),
  published("f-035", "Tabulation of PS 20, dressed 2x6", "C", "dressed_sizes.depth", "5.5 in", {
    row: ["dressed_sizes.nominal", "2x6"],
  }),
  published("f-036", "Tabulation of PS 20, dressed 2x8", "C", "dressed_sizes.thickness", "1.5 in", {
    row: ["dressed_sizes.nominal", "2x8"],
  }),
  published("f-036", "Tabulation of PS 20, dressed 2x8", "C", "dressed_sizes.depth", "7.25 in", {
    row: ["dressed_sizes.nominal", "2x8"],
  }),
  published("f-037", "Tabulation of PS 20, dressed 2x10", "C", "dressed_sizes.thickness", "1.5 in", {
    row: ["dressed_sizes.nominal", "2x10"],
  }),
  published("f-037", "Tabulation of PS 20, dressed 2x10", "C", "dressed_sizes.depth", "9.25 in", {
    row: ["dressed_sizes.nominal", "2x10"],
  }),
  published("f-038", "Tabulation of PS 20, dressed 2x12", "C", "dressed_sizes.thickness", "1.5 in", {
    row: ["dressed_sizes.nominal", "2x12"],
  }),
  published("f-038", "Tabulation of PS 20, dressed 2x12", "C", "dressed_sizes.depth", "11.25 in", {
    row: ["dressed_sizes.nominal", "2x12"],
  }),
  published("f-039", "Tabulation of PS 20, dressed 4x4", "M", "dressed_sizes.thickness", "3.5 in", {
    row: ["dressed_sizes.nominal", "4x4"],
  }),
  published("f-039", "Tabulation of PS 20, dressed 4x4", "M", "dressed_sizes.depth", "3.5 in", {
    row: ["dressed_sizes.nominal", "4x4"],
  }),
  published("f-040", "Tabulation of PS 20, dressed 6x6", "C", "dressed_sizes.thickness", "5.5 in", {
    row: ["dressed_sizes.nominal", "6x6"],
  }),
  published("f-040", "Tabulation of PS 20, dressed 6x6", "C", "dressed_sizes.depth", "5.5 in", {
    row: ["dressed_sizes.nominal", "6x6"],
  }),
  published("f-015", "Wood handbook, western redcedar", "B", "wood_species_figures.shrinkage", "5 %", {
    row: ["wood_species_figures.species", "western redcedar"],
  }),
  published("f-016", "Wood handbook, northern white-cedar", "B", "wood_species_figures.shrinkage", "4.9 %", {
    row: ["wood_species_figures.species", "northern white-cedar"],
  }),
  published("f-017", "Wood handbook, Douglas-fir", "B", "wood_species_figures.shrinkage", "7.6 %", {
    row: ["wood_species_figures.species", "Douglas-fir, coast"],
  }),
  published(
    "f-025",
    "Specific gravity at 12 %, Douglas-fir, coast",
    "M",
    "wood_species_figures.gravity",
    "0.48",
    { row: ["wood_species_figures.species", "Douglas-fir, coast"] },
  ),
  published("f-026", "Specific gravity at 12 %, loblolly pine", "M", "wood_species_figures.gravity", "0.51", {
    row: ["wood_species_figures.species", "loblolly pine"],
  }),
  published("f-027", "Specific gravity at 12 %, white spruce", "M", "wood_species_figures.gravity", "0.4", {
    row: ["wood_species_figures.species", "white spruce"],
  }),
  published(
    "f-028",
    "Specific gravity at 12 %, western redcedar",
    "M",
    "wood_species_figures.gravity",
    "0.32",
    { row: ["wood_species_figures.species", "western redcedar"] },
  ),
  published(
    "f-029",
    "Specific gravity at 12 %, northern white-cedar",
    "M",
    "wood_species_figures.gravity",
    "0.31",
    { row: ["wood_species_figures.species", "northern white-cedar"] },
  ),
  published("f-032", "US Navy engineering aid text", "A", "board_foot", "144 cu in"),
  published("f-032", "US Navy engineering aid text, thinner counts as", "A", "board_foot_thinnest", "1 in"),
  published("f-033", "Board foot in SI", "M", "board_foot", "0.002359737 m3", { within: 0.000001 }),
  published("f-043", "Water that treating adds", "C", "treating_water", "32 lb/ft3"),
  published("f-045", "Panel makers' association", "A", "sheet_gap", "1/8 in"),
  published("f-046", "Panel testing agency, spans of a panel", "B", "sheet_bays_least", "2"),
  published("f-048", "Gap after drying, boards laid wet", "C", "board_gap_most", "3/8 in"),
  published("f-049", "Gap of seasoned boards", "C", "board_gap_least", "1/8 in"),
  published("g-001", "Yield of a bag of 40 lb", "C", "concrete_bags.yield", "0.3 ft3", {
    row: ["concrete_bags.bag", "40 lb"],
  }),
  published("g-002", "Yield of a bag of 60 lb", "C", "concrete_bags.yield", "0.45 ft3", {
    row: ["concrete_bags.bag", "60 lb"],
  }),
  published("g-003", "Yield of a bag of 80 lb", "C", "concrete_bags.yield", "0.6 ft3", {
    row: ["concrete_bags.bag", "80 lb"],
  }),
  published("g-006", "Density of plain concrete", "C", "block_density", "150 lb/ft3"),
  published("g-006", "Density of plain concrete", "C", "concrete_density", "2400 kg/m3"),
  published("h-002", "Table of expansion, polypropylene", "C", "tile_expansion", "121 millionths per K", {
    template: "game-table-platform",
  }),
  published("h-003", "Pipe table, polypropylene", "C", "tile_expansion_high", "150 millionths per K"),
  published("h-004", "Table of expansion, polyethylene", "C", "plastics.low", "130 millionths per K", {
    row: ["plastics.plastic", "polyethylene"],
  }),
  published("h-004", "Table of expansion, polyethylene", "C", "plastics.high", "170 millionths per K", {
    row: ["plastics.plastic", "polyethylene"],
  }),
  published(
    "h-005",
    "Table of expansion, polypropylene with glass",
    "C",
    "plastics.low",
    "32 millionths per K",
    { row: ["plastics.plastic", "polypropylene with glass"] },
  ),
  published(
    "h-006",
    "Table of expansion, the concrete of a slab",
    "C",
    "plastics.low",
    "14 millionths per K",
    { row: ["plastics.plastic", "the concrete of a slab"] },
  ),
  published("h-011", "15 m over 55 K at 100 millionths", "M", "tile_growth_length", "82.5 mm", {
    template: "game-table-platform",
    typed: {
      tile_area_length: "15 m",
      lay_temperature: "-20 °C",
      hottest_temperature: "35 °C",
      tile_expansion: "100 millionths per K",
    },
  }),
  published("h-011", "15 m over 55 K at 150 millionths", "M", "tile_growth_length", "123.8 mm", {
    template: "game-table-platform",
    typed: {
      tile_area_length: "15 m",
      lay_temperature: "-20 °C",
      hottest_temperature: "35 °C",
      tile_expansion: "150 millionths per K",
    },
    within: 0.001,
  }),
  published("h-012", "Habit for snap tiles, least gap 6 mm", "M", "tile_edge_gap_least", "6 mm", {
    within: 0.06,
    note: "Held as 1/4 in, 6.35 mm.",
  }),
  published("i-018", "FAO hanging ratios, hung at 0.5", "B", "net_order.height", 0.866, {
    over: "net_order.stretched_height",
    row: ["net_order.of", "all nets"],
    template: "game-table-platform",
    typed: { net_hanging_ratio: "0.5" },
    within: 0.001,
  }),
  published("i-018", "FAO hanging ratios, hung at 0.6", "B", "net_order.height", 0.8, {
    over: "net_order.stretched_height",
    row: ["net_order.of", "all nets"],
    template: "game-table-platform",
    typed: { net_hanging_ratio: "0.6" },
    within: 0.001,
  }),
  published("i-018", "FAO hanging ratios, hung at 0.707", "B", "net_order.height", 707 / 1000, {
    over: "net_order.stretched_height",
    row: ["net_order.of", "all nets"],
    template: "game-table-platform",
    typed: { net_hanging_ratio: "0.707" },
    within: 0.001,
  }),
  published("i-018", "FAO hanging ratios, hung at 0.8", "B", "net_order.height", 0.6, {
    over: "net_order.stretched_height",
    row: ["net_order.of", "all nets"],
    template: "game-table-platform",
    typed: { net_hanging_ratio: "0.8" },
    within: 0.001,
  }),
  published("i-019", "Netting habit, mesh for a 40 mm ball", "M", "net_mesh_most", "30 mm"),
  published("j-001", "Laws of table tennis", "B", "game_room.length", "2.74 m", {
    row: ["game_room.what", "table"],
  }),
  published("j-001", "Laws of table tennis", "B", "game_room.width", "1.525 m", {
    row: ["game_room.what", "table"],
  }),
  published("j-001", "Laws of table tennis", "B", "table_height", "0.76 m"),
  published("j-007", "Playing area for recreation", "C", "game_room.length", "8.5 m", {
    row: ["game_room.what", "playing area for recreation"],
  }),
  published("j-007", "Playing area for recreation", "C", "game_room.width", "4.12 m", {
    row: ["game_room.what", "playing area for recreation"],
  }),
  published("j-009", "Equipment rules, ball", "M", "ball_diameter", "40 mm"),
  published(
    "deck_joist_spans",
    "DCA 6 table 2, overhang a quarter of the span",
    "A",
    "overhang_share_most",
    "25 %",
    { template: "game-table-platform" },
  ),
  published(
    "decking_max_joist_spacing",
    "IRC table R507.7, 5/4 boards",
    "A",
    "decking_spans.spacing",
    "16 in",
    { row: ["decking_spans.thickness", "1 in"] },
  ),
  published(
    "decking_max_joist_spacing",
    "IRC table R507.7, 2x boards",
    "A",
    "decking_spans.spacing",
    "24 in",
    { row: ["decking_spans.thickness", "1.5 in"] },
  ),
]
