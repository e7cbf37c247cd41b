import type { Column, Entry } from "@pegbook/engine"
import type { TimberMember } from "../solvers/timber-problem.ts"
import { ARITHMETIC, GEOMETRY, PS_20 } from "../sources.ts"
import { WOOD_DENSITY } from "../sources-deck.ts"
import type { PlacedMaterial } from "./placed-materials.ts"
import { rowChoice } from "./row-choice.ts"

interface Formulas {
  readonly pieces: string
  readonly size: string
  readonly longest: string
  readonly one: string
  readonly all: string
  readonly dry: string
  readonly asBought: string
}

const real = (side: "thickness" | "depth"): string =>
  `INDEX(dressed_sizes.${side}; MATCH(size; dressed_sizes.nominal; 0))`

const ofTimber = ({ part, size, lengths }: TimberMember): readonly [role: string, formulas: Formulas] => [
  part,
  {
    pieces: "SUMIF(timber_pieces.part; role; timber_pieces.count)",
    size,
    longest: `IF(pieces = 0; 0; MAX(${lengths}))`,
    one: `longest * ${real("thickness")} * ${real("depth")}`,
    all: "SUMIF(timber_pieces.part; role; timber_pieces.volume)",
    dry: "wood_density_dry",
    asBought: "wood_density_bought",
  },
]

const figureOf = (column: "dry" | "as_bought"): string =>
  `INDEX(material_densities.${column}; MATCH(role; material_densities.material; 0))`

const ofMaterial = ({
  role,
  pieces,
  longest,
  one,
  all,
  density,
}: PlacedMaterial): readonly [string, Formulas] => [
  role,
  {
    pieces,
    size: '""',
    longest,
    one,
    all,
    dry: "formula" in density ? density.formula : figureOf("dry"),
    asBought: "formula" in density ? density.formula : figureOf("as_bought"),
  },
]

/** Densities of what is not timber, where the template has none of its own. */
function densities(materials: readonly PlacedMaterial[]): readonly Entry[] {
  const figures = materials.flatMap(({ role, density, sources }) =>
    "formula" in density ? [] : [{ role, ...density, sources }],
  )
  if (figures.length === 0) return []
  const sources = figures.flatMap((figure) => figure.sources)
  return [
    {
      kind: "table",
      name: "material_densities",
      label: "How heavy materials are",
      rows: { kind: "figures" },
      why: "What counts while you have not weighed one yourself.",
      sources,
      columns: [
        {
          name: "material",
          label: "Material",
          measure: "text",
          values: figures.map(({ role }) => role),
          why: "As on the buying list.",
          sources: [ARITHMETIC],
        },
        {
          name: "dry",
          label: "Density, dry",
          measure: "density",
          values: figures.map(({ dry }) => dry),
          why: "As it will be in place.",
          sources,
        },
        {
          name: "as_bought",
          label: "Density, as bought",
          measure: "density",
          values: figures.map(({ asBought }) => asBought),
          why: "As you lift it.",
          sources,
        },
        {
          name: "remark",
          label: "Of what",
          measure: "text",
          values: figures.map(({ why }) => why),
          why: "What the figure is of.",
          sources,
        },
      ],
    },
  ]
}

function columnsOf(rows: readonly (readonly [role: string, formulas: Formulas])[]): readonly Column[] {
  const ofRow = (member: keyof Formulas): string => {
    const formulas = rows.map(([row, all]) => ({ row, formula: all[member] }))
    const [first] = formulas
    const alike = formulas.every(({ formula }) => formula === first?.formula)
    return alike && first !== undefined ? first.formula : rowChoice("role", formulas)
  }
  return [
    {
      name: "role",
      label: "What",
      measure: "text",
      values: rows.map(([role]) => role),
      why: "What each kind of piece is there for.",
      sources: [ARITHMETIC],
    },
    {
      name: "pieces",
      label: "Pieces",
      measure: "count",
      formula: ofRow("pieces"),
      why: "As they are cut and laid. Nothing for what is not counted by the piece.",
      sources: [GEOMETRY],
    },
    {
      name: "size",
      label: "Size",
      measure: "text",
      formula: ofRow("size"),
      why: "Of timber.",
      sources: [ARITHMETIC],
    },
    {
      name: "longest",
      label: "Longest piece",
      measure: "length",
      formula: ofRow("longest"),
      why: "Who has to turn with it, and where.",
      sources: [GEOMETRY],
    },
    {
      name: "one",
      label: "Volume of that piece",
      measure: "volume",
      formula: ofRow("one"),
      why: "By the real size.",
      sources: [PS_20],
    },
    {
      name: "heaviest",
      label: "Heaviest piece, as bought",
      measure: "mass",
      formula: "IF(pieces = 0; 0; one * density_bought)",
      why: "What you lift at once.",
      sources: [WOOD_DENSITY],
    },
    {
      name: "volume",
      label: "Volume of all",
      measure: "volume",
      formula: ofRow("all"),
      why: "As laid, without off-cuts and spare.",
      sources: [GEOMETRY],
    },
    {
      name: "density_dry",
      label: "Density, dry",
      measure: "density",
      formula: ofRow("dry"),
      why: "Of the timber, or from the figures for materials.",
      sources: [WOOD_DENSITY],
    },
    {
      name: "density_bought",
      label: "Density, as bought",
      measure: "density",
      formula: ofRow("asBought"),
      why: "Fresh from the treater, timber and sheets hold water.",
      sources: [WOOD_DENSITY],
    },
    {
      name: "mass_dry",
      label: "All of them, dry",
      measure: "mass",
      formula: "volume * density_dry",
      why: "What they put on the ground in the end.",
      sources: [WOOD_DENSITY],
    },
    {
      name: "mass_wet",
      label: "All of them, as bought",
      measure: "mass",
      formula: "volume * density_bought",
      why: "What you lift, one after the other.",
      sources: [WOOD_DENSITY],
    },
  ]
}

/**
 * What the members weigh as they are built in, a row a role: `member_masses`, and what it comes to: `built_mass`.
 *
 * Needs: timber_pieces, dressed_sizes, wood_density_dry, wood_density_bought, and what the members and materials name.
 */
export function memberMasses(
  members: readonly TimberMember[],
  materials: readonly PlacedMaterial[],
): readonly Entry[] {
  const total = (
    name: string,
    label: string,
    measure: "mass" | "length",
    of: string,
    why: string,
  ): Column => ({
    name,
    label,
    measure,
    formula: of,
    why,
    sources: [ARITHMETIC],
  })
  return [
    ...densities(materials),
    {
      kind: "table",
      name: "member_masses",
      label: "Weight by what the pieces are for",
      rows: { kind: "figures" },
      why: "By density and size, as built in: off-cuts and spare are on the list to haul.",
      sources: [WOOD_DENSITY, GEOMETRY],
      columns: columnsOf([
        ...members.filter(({ spare }) => spare !== true).map(ofTimber),
        ...materials.map(ofMaterial),
      ]),
    },
    {
      kind: "table",
      name: "built_mass",
      label: "All of it, as built",
      rows: { kind: "formula", formula: "1" },
      why: "One row: what stands there in the end. Metal, fabric and what you put on it are not counted.",
      sources: [ARITHMETIC],
      columns: [
        total("dry", "Dry", "mass", "SUM(member_masses.mass_dry)", "After a summer in place."),
        total("wet", "As bought", "mass", "SUM(member_masses.mass_wet)", "On the day that it is built."),
        total(
          "heaviest",
          "Heaviest piece",
          "mass",
          "MAX(member_masses.heaviest)",
          "Cut and ready to be laid; as bought it may be longer.",
        ),
        total(
          "longest",
          "Longest piece",
          "length",
          "MAX(member_masses.longest)",
          "Cut and ready to be laid.",
        ),
      ],
    },
  ]
}
