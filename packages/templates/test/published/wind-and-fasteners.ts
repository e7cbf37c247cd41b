import { type PublishedValue, published } from "./published-value.ts"

/** Tables of one row are found by a figure that stands beside them. */
const ONLY_ROW = { row: ["wind_factors.gust", "0.85"] } as const

/** Wind, posts in the ground, and what screws and nails hold. */
export const windAndFasteners: readonly PublishedValue[] = [
  published("m-020", "Permit file, Idaho: 115 mph, exposure B", "C", "wind.velocity_pressure", "20.1 psf", {
    ...ONLY_ROW,
    within: 0.003,
  }),
  published(
    "i-001, i-002",
    "ASCE 7, velocity pressure",
    "B",
    "wind_factors.air_half_density",
    "0.613 kg/m3",
    {
      ...ONLY_ROW,
    },
  ),
  published(
    "i-007",
    "ASCE 7-16 in a permit calculation, least",
    "B",
    "wind_factors.pressure_least",
    "16 psf",
    {
      ...ONLY_ROW,
    },
  ),
  published("i-010", "ASCE 7, exposure C near the ground", "M", "exposure_factors.factor", "0.85", {
    row: ["exposure_factors.exposure", "C"],
  }),
  published("i-003 to i-006", "ASCE 7-16 table 29.4-2, flat, under 0.1", "B", "net_shape_factors.flat", "2", {
    row: ["net_shape_factors.solidity", "0"],
  }),
  published("i-003 to i-006", "the same, flat, 0.1 to 0.29", "B", "net_shape_factors.flat", "1.8", {
    row: ["net_shape_factors.solidity", "0.1"],
  }),
  published("i-003 to i-006", "the same, round, 0.3 to 0.7", "B", "net_shape_factors.thin", "1.5", {
    row: ["net_shape_factors.solidity", "0.3"],
  }),
  published("i-011", "Solid share of 1.5 mm twine in 30 mm mesh", "M", "net_wind.solidity", 0.0975, {
    ...ONLY_ROW,
    typed: { net_twine: "1.5 mm", net_mesh: "30 mm" },
  }),
  published("i-014", "IBC 1807.3.2, depth of a post", "B", "net_wind_factors.depth_factor", "2.34", {
    ...ONLY_ROW,
  }),
  published("i-014", "the same, factor of the height", "B", "net_wind_factors.depth_ratio", "4.36", {
    ...ONLY_ROW,
  }),
  published(
    "a-003 to a-005",
    "IBC table 1806.2, lateral, sand",
    "B",
    "lateral_bearings.pressure",
    "150 psf",
    {
      row: ["lateral_bearings.soil", "sand"],
    },
  ),
  published("a-008", "IBC table 1806.2, friction on gravel", "B", "wind_building_factors.friction", "0.35", {
    ...ONLY_ROW,
    template: "shed-base",
  }),
  published("a-008", "the same, on sand", "B", "wind_building_factors.friction", "0.25", {
    ...ONLY_ROW,
    template: "greenhouse-floor",
  }),
  published(
    "d-033",
    "Civil Engineering Formulas, withdrawal",
    "C",
    "fastener_factors.withdrawal",
    "2850 psi",
    {
      row: ["fastener_factors.wet", "0.7"],
    },
  ),
  published("d-034 to d-039", "the same, sideways, hemlock", "C", "species_fasteners.sideways", "3240 psi", {
    row: ["species_fasteners.species", "Hem-Fir"],
  }),
  published("d-048", "Wood Handbook, withdrawal in a test", "M", "fastener_factors.ultimate", "15700 psi", {
    row: ["fastener_factors.wet", "0.7"],
  }),
  published("d-050", "NDS, least penetration", "M", "fastener_factors.penetration_least", "6", {
    row: ["fastener_factors.wet", "0.7"],
  }),
  published("d-062, m-024", "16d common nail", "C", "fastener_factors.nail_lateral", "141 lb", {
    row: ["fastener_factors.wet", "0.7"],
  }),
  published("specific_gravity", "NDS 2018 table 12.3.3A, Hem-Fir", "B", "species_fasteners.gravity", "0.43", {
    row: ["species_fasteners.species", "Hem-Fir"],
  }),
]
