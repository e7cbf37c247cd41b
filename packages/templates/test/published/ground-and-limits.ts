import { type PublishedValue, published } from "./published-value.ts"

/** Ground, frost, permits and loads. */
export const groundAndLimits: readonly PublishedValue[] = [
  published("a-003", "IRC table R401.4.1", "B", "soil_classes.bears", "3000 psf", {
    row: ["soil_classes.soil", "sandy gravel and gravel"],
  }),
  published("a-004", "IRC table R401.4.1", "B", "soil_classes.bears", "2000 psf", {
    row: ["soil_classes.soil", "sand, silty or clayey sand"],
  }),
  published("a-005", "IRC table R401.4.1", "B", "soil_bearing", "1500 psf", {
    template: "game-table-platform",
  }),
  published("a-022", "IRC R401.3, fall away from the building", "A", "fall_away_run", "10 ft"),
  published("a-022", "IRC R401.3, fall away from the building", "A", "fall_away_drop", "6 in"),
  published("a-022", "IRC R401.3, 6 in over 10 ft", "A", "fall_away_slope", "5 %"),
  published("a-023", "IRC R403, footing below undisturbed ground", "B", "footing_depth_least", "12 in"),
  published("a-025", "IRC R403.1.4.1 as amended in Connecticut", "B", "elsewhere_areas.area", "600 ft2", {
    row: ["elsewhere_areas.what", "light structure let off the frost depth"],
  }),
  published("a-030", "Ontario Building Code 9.12.2.2.(7)", "B", "elsewhere_areas.area", "55 m2", {
    row: ["elsewhere_areas.what", "let off the frost depth"],
  }),
  published("a-030", "Ontario Building Code 9.12.2.2.(7)", "B", "elsewhere_heights.height", "600 mm", {
    row: ["elsewhere_heights.what", "height let off the frost depth"],
  }),
  published("a-034", "Minnesota Rules 1303.1600, zone 1", "M", "elsewhere_heights.height", "60 in", {
    row: ["elsewhere_heights.what", "frost depth in a cold place"],
  }),
  published("b-001", "IRC R105.2 as a Californian city words it", "A", "elsewhere_areas.area", "200 ft2", {
    row: ["elsewhere_areas.what", "free-standing deck"],
  }),
  published("b-002", "A county of Washington State", "A", "elsewhere_heights.height", "30 in", {
    row: ["elsewhere_heights.place", "one county in Washington State"],
  }),
  published("b-004", "IBC 105.2", "B", "elsewhere_areas.area", "120 ft2", {
    row: ["elsewhere_areas.what", "small building"],
  }),
  published("b-006", "IRC R312.1", "A", "elsewhere_heights.height", "30 in", {
    row: ["elsewhere_heights.place", "model house code"],
  }),
  published("b-006", "IRC R312.1", "A", "guard_reach", "36 in", { template: "game-table-platform" }),
  published("b-008", "South Carolina's R312", "A", "elsewhere_slopes.slope", "0.25", {
    row: ["elsewhere_slopes.place", "South Carolina"],
  }),
  published("b-009", "IRC R311.7", "A", "riser_limit", "7.75 in", { template: "game-table-platform" }),
  published("b-012", "Ontario Regulation 867/21", "A", "elsewhere_areas.area", "15 m2", {
    row: ["elsewhere_areas.what", "storage shed"],
  }),
  published("b-013", "Ontario's registry, 10 m2 threshold", "A", "elsewhere_areas.area", "10 m2", {
    row: ["elsewhere_areas.what", "any other structure"],
  }),
  published("b-015", "An Ontario city's deck page", "A", "elsewhere_heights.height", "600 mm", {
    row: ["elsewhere_heights.place", "Ontario, several cities"],
  }),
  published("b-020", "Ontario Building Code, guards", "B", "elsewhere_heights.height", "600 mm", {
    row: ["elsewhere_heights.mind", "also where the ground within 1.2 m falls away more than one in two"],
  }),
  published("b-020", "Ontario Building Code, guards", "B", "elsewhere_heights.height", "1200 mm", {
    row: ["elsewhere_heights.what", "ground that counts for a guard"],
  }),
  published("b-020", "Ontario Building Code, guards", "B", "elsewhere_slopes.slope", "0.5", {
    row: ["elsewhere_slopes.place", "Ontario"],
  }),
  published(
    "c-002",
    "Textbook weights of sand and gravel by state, 3650 over 2860",
    "B",
    "stone_loose_factor",
    "1.276",
    {
      template: "game-table-platform",
      within: 0.025,
      note: "The rule for road base, 1.25, is a little less than this.",
    },
  ),
  published("c-006", "Swell factors of soils, earth and loam 25 %", "C", "spoil_loose_factor", "1.25", {
    template: "game-table-platform",
  }),
  published("c-014", "FM 5-434 table 1-1, loam", "M", "soil_tamped_factor", "0.9"),
  published("c-023", "Habit with a plate compactor, layers of 3 to 4 in", "M", "stone_layer_most", "4 in"),
  published("c-036", "Working densities, crusher run tamped", "M", "stone_density", "2150 kg/m3", {
    template: "game-table-platform",
  }),
  published("c-040", "Road base rule, 1.25 loose for 1 tamped", "C", "stone_loose_factor", "1.25", {
    template: "game-table-platform",
  }),
  published("e-026", "Notice to the locate service, 2 to 3 working days", "M", "locate_notice_days", "3", {
    template: "game-table-platform",
  }),
  published("design_live_loads", "IRC, decks", "B", "live_load", "40 psf", { template: "ground-level-deck" }),
  published("design_live_loads", "IBC, assembly", "B", "live_load", "100 psf", {
    template: "game-table-platform",
  }),
]
