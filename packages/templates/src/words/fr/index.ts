import { type CheckedDictionary, dictionaryOf } from "../dictionary.ts"
import { animalMesh } from "./animal-mesh.ts"
import { beam } from "./beam.ts"
import { beamCapacity } from "./beam-capacity.ts"
import { beamJoints } from "./beam-joints.ts"
import { beamSpans } from "./beam-spans.ts"
import { beamStrengthChecks } from "./beam-strength-checks.ts"
import { beamStresses } from "./beam-stresses.ts"
import { beams } from "./beams.ts"
import { bearerJoints } from "./bearer-joints.ts"
import { bearers } from "./bearers.ts"
import { blocking } from "./blocking.ts"
import { blocks } from "./blocks.ts"
import { boards } from "./boards.ts"
import { buildUp } from "./build-up.ts"
import { checkedSpan } from "./checked-span.ts"
import { cleats } from "./cleats.ts"
import { cutFill } from "./cut-fill.ts"
import { deckingSpacing } from "./decking-spacing.ts"
import { dig } from "./dig.ts"
import { door } from "./door.ts"
import { drainage } from "./drainage.ts"
import { drawings } from "./drawings.ts"
import { edgeBoards } from "./edge-boards.ts"
import { edgeTrim } from "./edge-trim.ts"
import { extra } from "./extra.ts"
import { fabric } from "./fabric.ts"
import { fastenerStrength } from "./fastener-strength.ts"
import { fixings1 } from "./fixings-1.ts"
import { fixings2 } from "./fixings-2.ts"
import { footings } from "./footings.ts"
import { frost } from "./frost.ts"
import { gameSpace } from "./game-space.ts"
import { greenhouse } from "./greenhouse.ts"
import { grid } from "./grid.ts"
import { ground } from "./ground.ts"
import { guard } from "./guard.ts"
import { haulage } from "./haulage.ts"
import { heights } from "./heights.ts"
import { houseRules } from "./house-rules.ts"
import { jointYields } from "./joint-yields.ts"
import { joist } from "./joist.ts"
import { joistCapacity } from "./joist-capacity.ts"
import { joistResistances } from "./joist-resistances.ts"
import { joistSpans } from "./joist-spans.ts"
import { joistStrengthChecks } from "./joist-strength-checks.ts"
import { joistStresses } from "./joist-stresses.ts"
import { joists } from "./joists.ts"
import { leaningOver } from "./leaning-over.ts"
import { limits } from "./limits.ts"
import { loads } from "./loads.ts"
import { masses } from "./masses.ts"
import { net } from "./net.ts"
import { netFoot } from "./net-foot.ts"
import { panel } from "./panel.ts"
import { panelFigures } from "./panel-figures.ts"
import { patterns } from "./patterns.ts"
import { posts } from "./posts.ts"
import { prices1 } from "./prices-1.ts"
import { prices2 } from "./prices-2.ts"
import { publishedStrengths } from "./published-strengths.ts"
import { ramps } from "./ramps.ts"
import { same } from "./same.ts"
import { services } from "./services.ts"
import { setOut } from "./set-out.ts"
import { sheets } from "./sheets.ts"
import { size } from "./size.ts"
import { skidJoints } from "./skid-joints.ts"
import { skids } from "./skids.ts"
import { sleepers } from "./sleepers.ts"
import { sources1 } from "./sources-1.ts"
import { sources2 } from "./sources-2.ts"
import { sources3 } from "./sources-3.ts"
import { stages1 } from "./stages-1.ts"
import { stages2 } from "./stages-2.ts"
import { steps } from "./steps.ts"
import { stoneBeds } from "./stone-beds.ts"
import { stonePad } from "./stone-pad.ts"
import { strength1 } from "./strength-1.ts"
import { strength2 } from "./strength-2.ts"
import { strengthFigures } from "./strength-figures.ts"
import { stringerJoints } from "./stringer-joints.ts"
import { stringers } from "./stringers.ts"
import { strips } from "./strips.ts"
import { supports1 } from "./supports-1.ts"
import { supports2 } from "./supports-2.ts"
import { surfaces } from "./surfaces.ts"
import { templates } from "./templates.ts"
import { tiles } from "./tiles.ts"
import { timber } from "./timber.ts"
import { timberKind } from "./timber-kind.ts"
import { treatment } from "./treatment.ts"
import { turf } from "./turf.ts"
import { values1 } from "./values-1.ts"
import { values2 } from "./values-2.ts"
import { values3 } from "./values-3.ts"
import { vibration } from "./vibration.ts"
import { wetSoil } from "./wet-soil.ts"
import { wind1 } from "./wind-1.ts"
import { wind2 } from "./wind-2.ts"
import { wood } from "./wood.ts"
import { work } from "./work.ts"

const texts = Object.assign(
  {},
  templates,
  stages1,
  stages2,
  drawings,
  gameSpace,
  sources1,
  sources2,
  sources3,
  size,
  ground,
  limits,
  frost,
  skids,
  supports1,
  supports2,
  surfaces,
  loads,
  dig,
  stoneBeds,
  blocks,
  skidJoints,
  joists,
  blocking,
  sheets,
  timberKind,
  strength1,
  strength2,
  wetSoil,
  publishedStrengths,
  tiles,
  edgeBoards,
  net,
  wind1,
  wind2,
  fixings1,
  fixings2,
  timber,
  treatment,
  netFoot,
  posts,
  prices1,
  prices2,
  wood,
  masses,
  haulage,
  buildUp,
  heights,
  setOut,
  work,
  houseRules,
  services,
  turf,
  grid,
  stonePad,
  fabric,
  fastenerStrength,
  drainage,
  door,
  animalMesh,
  cutFill,
  footings,
  stringers,
  sleepers,
  strips,
  stringerJoints,
  cleats,
  boards,
  edgeTrim,
  ramps,
  steps,
  beams,
  beamJoints,
  bearers,
  bearerJoints,
  greenhouse,
  guard,
  jointYields,
  leaningOver,
  joist,
  joistSpans,
  checkedSpan,
  joistStrengthChecks,
  joistCapacity,
  joistStresses,
  joistResistances,
  vibration,
  strengthFigures,
  beam,
  beamSpans,
  beamStrengthChecks,
  beamCapacity,
  beamStresses,
  panel,
  deckingSpacing,
  panelFigures,
  values1,
  values2,
  values3,
  extra,
)

/** The templates' texts in French. `number` writes a number as French does. */
export function french(number: (text: string) => string): CheckedDictionary {
  return dictionaryOf({ texts, patterns, same }, number)
}
