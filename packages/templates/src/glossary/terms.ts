/** A word of the trade, as its forms stand in texts, and what it means to somebody who never built. */
export interface Term {
  readonly id: string
  /** The first is the one that a list shows. */
  readonly forms: readonly string[]
  readonly means: string
}

/** Words that the workbooks use and that a newcomer may not know. Common practice, no source. */
export const TERMS: readonly Term[] = [
  {
    id: "skid",
    forms: ["skid", "skids"],
    means: "A long, thick timber that lies on the supports and carries the whole frame.",
  },
  {
    id: "bearer",
    forms: ["bearer", "bearers"],
    means: "A timber that lies on the supports and carries the joists, which cross it.",
  },
  {
    id: "beam",
    forms: ["beam", "beams"],
    means:
      "A strong timber, or several planks fixed side by side, that carries the joists from support to support.",
  },
  {
    id: "joist",
    forms: ["joist", "joists"],
    means: "One of the timbers that stand on edge, side by side, right under the boards or sheets.",
  },
  {
    id: "rim",
    forms: ["rim", "rims"],
    means: "The timber along the ends of the joists, which closes the frame and holds them upright.",
  },
  {
    id: "blocking",
    forms: ["blocking"],
    means:
      "Short pieces between two joists. They stop the joists from twisting, and hold up edges that end between them.",
  },
  {
    id: "stringer",
    forms: ["stringer", "stringers"],
    means: "A long timber in the direction of a walk or a flight of steps, which carries boards or treads.",
  },
  {
    id: "sleeper",
    forms: ["sleeper", "sleepers"],
    means:
      "A timber that lies flat on stone or on the ground, across the walk, and carries what is above it.",
  },
  {
    id: "cleat",
    forms: ["cleat", "cleats"],
    means: "A short piece screwed beside a joint, so that the two ends stay in line.",
  },
  {
    id: "plies",
    forms: ["plies", "ply"],
    means: "The layers of a piece that is made of several: planks of a beam, veneers of a sheet.",
  },
  {
    id: "kerb",
    forms: ["kerb", "kerbs"],
    means: "A low timber along an edge that keeps wheels and feet from going over it.",
  },
  {
    id: "packer",
    forms: ["packer", "packers"],
    means: "A thin piece put under or between timbers to bring them to the right height or distance.",
  },
  { id: "bay", forms: ["bay", "bays"], means: "The space between one joist, or support, and the next." },
  { id: "course", forms: ["course", "courses"], means: "One layer of blocks." },
  { id: "seam", forms: ["seam", "seams"], means: "The line where two sheets meet." },
  {
    id: "stagger",
    forms: ["stagger", "staggered"],
    means: "Joints of neighbouring lines set apart, so that they do not line up and make a weak place.",
  },
  {
    id: "overhang",
    forms: ["overhang", "overhangs"],
    means: "The part of a timber or board that reaches beyond its last support.",
  },
  { id: "span", forms: ["span", "spans"], means: "The free length of a timber between two supports." },
  {
    id: "bearing",
    forms: ["bearing"],
    means: "How much of a piece rests on what carries it; also how hard soil or wood may be pressed there.",
  },
  { id: "deflection", forms: ["deflection"], means: "How far a timber sags under its load." },
  {
    id: "shear",
    forms: ["shear"],
    means: "The load that tries to slide one part of a timber past the next, greatest near its supports.",
  },
  {
    id: "bending",
    forms: ["bending"],
    means: "What a load does to a timber between supports: it stretches the underside and presses the top.",
  },
  { id: "live load", forms: ["live load"], means: "Weight that comes and goes: people, furniture, snow." },
  {
    id: "dead load",
    forms: ["dead load"],
    means: "Weight that stays: the timber, the boards and all that is fixed to them.",
  },
  {
    id: "uplift",
    forms: ["uplift"],
    means: "The pull of the wind that tries to lift something off the ground.",
  },
  {
    id: "incised",
    forms: ["incised"],
    means:
      "With rows of small slits cut in, so that the preservative goes deeper. It makes the wood a little weaker.",
  },
  {
    id: "wet service",
    forms: ["wet service"],
    means: "Timber that stays damp, as out of doors. It is weaker than dry timber.",
  },
  {
    id: "grade",
    forms: ["grade", "grades"],
    means: "How good a piece of timber is by knots and faults, as its stamp says. Strength goes by it.",
  },
  {
    id: "species",
    forms: ["species"],
    means: "The kind of tree that the timber is from, or a group of kinds sold together.",
  },
  {
    id: "limit states",
    forms: ["limit states"],
    means:
      "A way of checking strength, used in Canada: loads are made larger and strengths smaller by factors, and compared.",
  },
  {
    id: "strength axis",
    forms: ["strength axis"],
    means: "The direction in which a sheet is strongest, mostly along its length. It goes across the joists.",
  },
  {
    id: "preservative",
    forms: ["preservative"],
    means: "What keeps rot and insects out of wood. Pressed in at the works, or brushed on where you cut.",
  },
  {
    id: "use class",
    forms: ["use class", "use classes"],
    means: "A label that says where treated wood may be used: above the ground, on it, or in it.",
  },
  {
    id: "hot-dip",
    forms: ["hot-dip"],
    means:
      "A thick coat of zinc, made by dipping steel into the melted metal. It lasts outdoors; thin shiny zinc does not.",
  },
  {
    id: "stainless",
    forms: ["stainless"],
    means: "Steel that does not rust in the wet. 304 serves inland, 316 near salt.",
  },
  { id: "hanger", forms: ["hanger", "hangers"], means: "A bent steel piece that holds the end of a joist." },
  { id: "tie", forms: ["tie", "ties"], means: "A small steel piece that holds one timber down on another." },
  { id: "withdrawal", forms: ["withdrawal"], means: "How hard a screw or nail can be pulled straight out." },
  {
    id: "kerf",
    forms: ["kerf", "saw kerf"],
    means: "The width of wood that the saw turns into dust at each cut.",
  },
  {
    id: "off-cut",
    forms: ["off-cut", "off-cuts"],
    means: "What is left of a board after its pieces are cut.",
  },
  {
    id: "sliver",
    forms: ["sliver", "slivers"],
    means: "A strip too narrow to be sound, left over at an edge.",
  },
  {
    id: "nominal",
    forms: ["nominal"],
    means: "The size in the name of a timber, not the size you measure: a 2x6 is 1 1/2 by 5 1/2 inches.",
  },
  {
    id: "board feet",
    forms: ["board feet", "board foot"],
    means:
      "A measure for the price of timber: a piece one foot long, one foot wide and one inch thick by its name.",
  },
  { id: "datum", forms: ["datum"], means: "The one point or height that all others are measured from." },
  { id: "fall", forms: ["fall", "falls"], means: "How much lower the ground is at the other end." },
  { id: "spoil", forms: ["spoil"], means: "The soil that is dug out." },
  { id: "turf", forms: ["turf"], means: "The grass with its roots and the soil they hold." },
  { id: "tamped", forms: ["tamped", "tamp"], means: "Beaten or shaken firm, in thin layers." },
  {
    id: "fabric",
    forms: ["fabric"],
    means: "A cloth laid between soil and stone, which lets water through and keeps them apart.",
  },
  {
    id: "footing",
    forms: ["footing", "footings"],
    means: "A foot of concrete in the ground that spreads a load on the soil.",
  },
  {
    id: "frost",
    forms: ["frost"],
    means: "Freezing ground swells and lifts what stands on it; below some depth it never freezes.",
  },
  { id: "riser", forms: ["riser", "risers"], means: "The height of one step." },
  { id: "tread", forms: ["tread", "treads"], means: "The part of a step that the foot stands on." },
  {
    id: "guard",
    forms: ["guard", "guards"],
    means: "A railing that stops people from falling off a high edge.",
  },
  { id: "sill", forms: ["sill"], means: "The lower edge of a door's opening." },
  {
    id: "diagonal",
    forms: ["diagonal", "diagonals"],
    means: "The line from corner to opposite corner. Where both are equal, the frame is square.",
  },
  {
    id: "edging",
    forms: ["edging"],
    means: "Boards set on edge round a bed of stone, which keep it from running out.",
  },
  {
    id: "guy",
    forms: ["guy", "guys", "guy line", "guy lines"],
    means: "A line from the top of a post to the ground, which holds it up against a pull.",
  },
  { id: "twine", forms: ["twine"], means: "The cord that a net is made of." },
  { id: "contingency", forms: ["contingency"], means: "A share added for what nobody foresaw." },
]
