import { type PublishedValue, published } from "./published-value.ts"

/** Worked examples that somebody published, put through the formulas. */
export const workedExamples: readonly PublishedValue[] = [
  published(
    "m-001",
    "US Army subcourse EN5155: fourteen 1x4 of 8 ft",
    "A",
    "stock_to_buy.board_feet",
    37.333333333333336,
    {
      row: ["stock_to_buy.size", "1x4"],
      template: "game-table-platform",
      typed: {
        platform_length: "38 ft",
        platform_width: "16 ft",
        edge_board_size: "1x4",
        edge_board_rise: "0 in",
        edge_board_stock: "8 ft",
        edge_board_ends: "2",
        edge_board_sides: "2",
      },
    },
  ),
  published("m-005", "US Army subcourse EN5156, stair of 13 risers", "A", "risers_low_end", "13", {
    template: "boardwalk",
    typed: {
      ground_fall_length: "83 1/4 in",
      ground_fall_width: "0 in",
      riser_limit: "7 1/4 in",
      tread_depth: "10 1/2 in",
      access_low_end: "steps",
    },
  }),
  published("m-005", "the same, risers", "A", "riser_height_low_end", "7.25 in", {
    template: "boardwalk",
    typed: {
      ground_fall_length: "83 1/4 in",
      ground_fall_width: "0 in",
      riser_limit: "7 1/4 in",
      tread_depth: "10 1/2 in",
      access_low_end: "steps",
    },
  }),
  published("m-005", "the same, treads one fewer than risers", "A", "climbs.treads", "12", {
    row: ["climbs.end", "low end"],
    template: "boardwalk",
    typed: {
      ground_fall_length: "83 1/4 in",
      ground_fall_width: "0 in",
      riser_limit: "7 1/4 in",
      tread_depth: "10 1/2 in",
      access_low_end: "steps",
    },
  }),
  published("m-005", "the same, run", "A", "flights.run", "126 in", {
    row: ["flights.end", "low end"],
    template: "boardwalk",
    typed: {
      ground_fall_length: "83 1/4 in",
      ground_fall_width: "0 in",
      riser_limit: "7 1/4 in",
      tread_depth: "10 1/2 in",
      access_low_end: "steps",
    },
  }),
  published(
    "m-007",
    "Lesson on earthwork: 18,500 tamped, shrinkage 15 %, are 21,764.7 in the ground",
    "B",
    "fill_from_ground",
    1.1764702702702703,
    { over: "fill_volume", template: "shed-base", typed: { soil_tamped_factor: "0.85" }, within: 0.00001 },
  ),
  published("m-007", "the same, swell 20 %: 26,117.6 loose", "B", "dug_volume_loose", 1.1999981621616653, {
    over: "dug_volume",
    template: "shed-base",
    typed: { spoil_loose_factor: "1.2" },
    within: 0.00001,
  }),
  published("m-008", "Textbook: 1,000 of clay, swell 30 %, are 1,300 loose", "B", "dug_volume_loose", 1.3, {
    over: "dug_volume",
    template: "game-table-platform",
    typed: { spoil_loose_factor: "1.3" },
  }),
  published("m-009", "Cell of 50 by 50 ft, mean of the corners", "C", "ground_plane.mean_level", "87.85 ft", {
    row: ["ground_plane.points", "4"],
    template: "game-table-platform",
    levels: [
      ["0 ft", "0 ft", "87.6 ft"],
      ["50 ft", "0 ft", "87.6 ft"],
      ["0 ft", "50 ft", "87.6 ft"],
      ["50 ft", "50 ft", "88.6 ft"],
    ],
  }),
  published("m-010", "Topsoil exercise, area of three rectangles as one", "C", "turf_area", "577.25 ft2", {
    template: "shed-base",
    typed: {
      platform_length: "25 ft",
      platform_width: "23.09 ft",
      stone_margin: "0 in",
      strip_depth: "9 in",
      spoil_loose_factor: "1.1",
    },
  }),
  published("m-010", "Topsoil exercise, 9 in deep", "C", "strip_volume", "432.94 ft3", {
    template: "shed-base",
    typed: {
      platform_length: "25 ft",
      platform_width: "23.09 ft",
      stone_margin: "0 in",
      strip_depth: "9 in",
      spoil_loose_factor: "1.1",
    },
    within: 0.0001,
  }),
  published("m-010", "Topsoil exercise, swell 10 %", "C", "strip_volume_loose", "17.63 yd3", {
    template: "shed-base",
    typed: {
      platform_length: "25 ft",
      platform_width: "23.09 ft",
      stone_margin: "0 in",
      strip_depth: "9 in",
      spoil_loose_factor: "1.1",
    },
    within: 0.001,
    note: "The page turns cubic feet to yards by 0.037 in place of 1/27, and prints 17.63 for 17.64.",
  }),
  published("m-011", "4 in tamped from stone that tamps to 0.75", "C", "stone_loose", 1.3325, {
    over: "stone_in_place",
    template: "game-table-platform",
    typed: { stone_loose_factor: "1.33333333" },
    within: 0.001,
    note: "The page prints just over 6 in, which is a ratio of 0.667; by its own 0.75 it is 5.33 in.",
  }),
  published("m-013", "Grade between two points, 3.05 %", "C", "ground_steepness", "3.05 %", {
    template: "game-table-platform",
    levels: [
      ["200 ft", "50 ft", "87 ft"],
      ["295 ft", "75 ft", "90 ft"],
      ["175 ft", "145 ft", "87 ft"],
    ],
    within: 0.002,
  }),
  published("m-027", "Density at 12 % moisture, gravity 0.40", "A", "wood_density_dry", "448 kg/m3", {
    template: "ground-level-deck",
    typed: { wood_species: "white spruce", moisture_dry: "12 %" },
    within: 0.001,
  }),
  published("m-028", "PVC pipe of 6 m over 60 K", "C", "tile_growth_length", "0.018 m", {
    template: "game-table-platform",
    typed: {
      tile_area_length: "6 m",
      tile_expansion: "50.4 millionths per K",
      lay_temperature: "0 °C",
      hottest_temperature: "60 °C",
    },
    within: 0.01,
    note: "Printed to two figures; 0.01814 m.",
  }),
  published(
    "m-033",
    "US Army subcourse EN01136: 106 in of boards of 5.5 in with 15 % waste are 23",
    "A",
    "board_spare_count",
    "3",
    {
      template: "ground-level-deck",
      typed: {
        platform_length: "10 ft",
        platform_width: "106 in",
        board_gap: "0 in",
        board_overhang: "0 in",
        spare_boards: "15 %",
      },
      note: "20 rows and 3 spare. The course divides by 0.85, which also comes to 23.",
    },
  ),
  published(
    "m-044",
    "Steel of 1.5 km over 20 K grows 0.3 m; a hundredth of it",
    "C",
    "tile_growth_length",
    "0.003 m",
    {
      template: "game-table-platform",
      typed: {
        tile_area_length: "15 m",
        tile_expansion: "10 millionths per K",
        lay_temperature: "0 °C",
        hottest_temperature: "20 °C",
      },
    },
  ),
]
