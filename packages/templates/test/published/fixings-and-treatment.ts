import { type PublishedValue, published } from "./published-value.ts"

/** Fixings, their metal, treatment and preservative. */
export const fixingsAndTreatment: readonly PublishedValue[] = [
  published(
    "d-013",
    "IRC table R602.3(1), panels of 19/32 in to 1 in",
    "B",
    "screw_spacing_panel_end",
    "6 in",
  ),
  published(
    "d-013",
    "IRC table R602.3(1), panels of 19/32 in to 1 in",
    "B",
    "screw_spacing_panel_field",
    "12 in",
  ),
  published("d-016", "IBC 2304.10.5.1, least screw in ACQ", "B", "fastener_needed", "hot-dip zinc", {
    template: "game-table-platform",
    typed: { timber_treatment: "copper quat (ACQ)" },
  }),
  published("d-017", "IBC 2304.10.5.1, least connector", "B", "connector_needed", "zinc G185", {
    template: "game-table-platform",
  }),
  published(
    "d-031",
    "Trade article, stainless advised above",
    "C",
    "stainless_retentions.above",
    "0.4 lb/ft3",
    { row: ["stainless_retentions.treatment", "copper quat (ACQ)"] },
  ),
  published(
    "d-031",
    "Trade article, stainless advised above",
    "C",
    "stainless_retentions.above",
    "0.41 lb/ft3",
    { row: ["stainless_retentions.treatment", "copper azole, CBA-A"] },
  ),
  published(
    "d-031",
    "Trade article, stainless advised above",
    "C",
    "stainless_retentions.above",
    "0.21 lb/ft3",
    { row: ["stainless_retentions.treatment", "copper azole, CA-B"] },
  ),
  published("d-032", "Habit for stainless grades, near salt water", "M", "fastener_needed", "stainless 316", {
    template: "game-table-platform",
    typed: { corrosive_site: "near salt water" },
  }),
  published("d-032", "Habit for stainless grades, by a pool", "M", "fastener_needed", "stainless 316", {
    template: "game-table-platform",
    typed: { corrosive_site: "by a pool or a salted road" },
  }),
  published("d-051", "How-to article on deck screws, thread below", "C", "screw_bite", "1.5 in"),
  published("d-051", "How-to article on deck screws, screws at a joist", "C", "screws_per_crossing", "2", {
    template: "ground-level-deck",
  }),
  published("d-052", "The same article's rule by area", "C", "screw_rules.screws", "350", {
    row: ["screw_rules.rule", "for deck boards"],
  }),
  published("d-052", "The same article's rule by area", "C", "screw_rules.area", "100 ft2", {
    row: ["screw_rules.rule", "for deck boards"],
  }),
  published(
    "d-052",
    "The same article's own deck of 10 by 10 ft, counted: 22 boards, 9 joists, 2 screws",
    "C",
    "screw_count",
    "396",
    {
      template: "ground-level-deck",
      typed: {
        platform_length: "10 ft",
        platform_width: "10 ft",
        board_gap: "0 in",
        board_overhang: "0 in",
        joist_spacing: "16 in",
      },
      note: "The article's rule says 350: it leaves out the end joist.",
    },
  ),
  published("d-063", "Trade habit, 5/4 boards", "M", "screw_kinds.least", "2.5 in", {
    row: ["screw_kinds.screw", "surface screws"],
    template: "ground-level-deck",
  }),
  published(
    "e-004",
    "AC236, nearer than this counts as ground contact",
    "B",
    "ground_contact_clearance",
    "6 in",
  ),
  published(
    "e-013",
    "Canadian Wood Council on the National Building Code",
    "A",
    "ground_contact_clearance",
    "150 mm",
    { within: 0.02, note: "6 in is 152.4 mm, the stricter of the two." },
  ),
  published("e-006", "AWPA retention, ACQ UC3B", "M", "treatment_retentions.above_ground", "0.25 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper quat (ACQ)"],
  }),
  published("e-006", "AWPA retention, ACQ UC4A", "M", "treatment_retentions.ground_contact", "0.4 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper quat (ACQ)"],
  }),
  published("e-006", "AWPA retention, ACQ UC4B", "M", "treatment_retentions.heavy_duty", "0.6 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper quat (ACQ)"],
  }),
  published("e-006", "AWPA retention, CA-B UC3B", "M", "treatment_retentions.above_ground", "0.1 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper azole, CA-B"],
  }),
  published("e-006", "AWPA retention, CA-B UC4A", "M", "treatment_retentions.ground_contact", "0.21 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper azole, CA-B"],
  }),
  published("e-006", "AWPA retention, CA-B UC4B", "M", "treatment_retentions.heavy_duty", "0.31 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper azole, CA-B"],
  }),
  published("e-006", "AWPA retention, CA-C UC3B", "M", "treatment_retentions.above_ground", "0.06 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper azole, CA-C"],
  }),
  published("e-006", "AWPA retention, CA-C UC4A", "M", "treatment_retentions.ground_contact", "0.15 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper azole, CA-C"],
  }),
  published("e-006", "AWPA retention, CA-C UC4B", "M", "treatment_retentions.heavy_duty", "0.31 lb/ft3", {
    row: ["treatment_retentions.treatment", "copper azole, CA-C"],
  }),
  published("e-006", "AWPA retention, MCA UC3B", "M", "treatment_retentions.above_ground", "0.06 lb/ft3", {
    row: ["treatment_retentions.treatment", "micronised copper (MCA)"],
  }),
  published("e-006", "AWPA retention, MCA UC4A", "M", "treatment_retentions.ground_contact", "0.15 lb/ft3", {
    row: ["treatment_retentions.treatment", "micronised copper (MCA)"],
  }),
  published("e-006", "AWPA retention, MCA UC4B", "M", "treatment_retentions.heavy_duty", "0.23 lb/ft3", {
    row: ["treatment_retentions.treatment", "micronised copper (MCA)"],
  }),
  published("e-006", "AWPA retention, CCA UC3B", "M", "treatment_retentions.above_ground", "0.25 lb/ft3", {
    row: ["treatment_retentions.treatment", "chromated copper arsenate (CCA)"],
  }),
  published("e-006", "AWPA retention, CCA UC4A", "M", "treatment_retentions.ground_contact", "0.4 lb/ft3", {
    row: ["treatment_retentions.treatment", "chromated copper arsenate (CCA)"],
  }),
  published("e-006", "AWPA retention, CCA UC4B", "M", "treatment_retentions.heavy_duty", "0.6 lb/ft3", {
    row: ["treatment_retentions.treatment", "chromated copper arsenate (CCA)"],
  }),
  published(
    "e-007",
    "AWPA M4 2008, copper in the field preservative",
    "B",
    "field_preservatives.copper",
    "2 %",
    {
      row: ["field_preservatives.preservative", "copper naphthenate"],
    },
  ),
  published("e-007", "The same, where 2 % is not to be had", "B", "field_preservatives.copper", "1 %", {
    row: ["field_preservatives.preservative", "copper naphthenate, where the stronger is not to be had"],
  }),
  published(
    "e-010",
    "Permit sheet of a preservative, rough wood",
    "B",
    "preservative_coverage.covers",
    "100 ft2",
    { row: ["preservative_coverage.wood", "rough, and end grain"] },
  ),
  published("e-010", "The same sheet, per litre", "B", "preservative_coverage.covers", 2500, {
    row: ["preservative_coverage.wood", "rough, and end grain"],
    over: "preservative_coverage.measure",
    within: 0.02,
  }),
  published("e-010", "The same sheet, coats", "B", "preservative_coats", "2"),
  published(
    "e-012",
    "Questions and answers of a preservative's maker",
    "C",
    "preservative_coverage.covers",
    "200 ft2",
    { row: ["preservative_coverage.wood", "smooth"] },
  ),
  published(
    "e-012",
    "The same page, square metres a gallon",
    "C",
    "preservative_coverage.covers",
    "18.6 m2",
    {
      row: ["preservative_coverage.wood", "smooth"],
      within: 0.002,
      note: "Printed as 18.6 m3: an area is meant.",
    },
  ),
  published("e-012", "The same page, per litre", "C", "preservative_coverage.covers", 4900, {
    row: ["preservative_coverage.wood", "smooth"],
    over: "preservative_coverage.measure",
    within: 0.01,
  }),
  published(
    "k-003",
    "Comparison of battery types by a maker of power tools",
    "B",
    "battery_charges.capacity",
    "50 %",
    { row: ["battery_charges.temperature", "-20 °C"] },
  ),
  published("k-006", "Data sheets of lithium cells, at freezing", "M", "battery_charges.capacity", "80 %", {
    row: ["battery_charges.temperature", "0 °C"],
    note: "80 to 90 per cent: the lower is taken.",
  }),
  published("k-001", "The same comparison, nickel-cadmium", "B", "battery_charges.capacity", "40 %", {
    row: ["battery_charges.temperature", "-18 °C"],
  }),
  published("k-002", "The same comparison, nickel-metal hydride", "B", "battery_charges.capacity", "0 %", {
    row: ["battery_charges.temperature", "-15 °C"],
  }),
  published("k-009", "Energy of one screw, from the battery", "M", "battery_charges.per_screw", "0.305 Wh", {
    row: ["battery_charges.temperature", "20 °C"],
    within: 0.02,
  }),
]
