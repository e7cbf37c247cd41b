import { type CheckedDictionary, dictionaryOf } from "../dictionary.ts"
import { blocking } from "./blocking.ts"
import { blocks } from "./blocks.ts"
import { dig } from "./dig.ts"
import { drawings } from "./drawings.ts"
import { frost } from "./frost.ts"
import { gameSpace } from "./game-space.ts"
import { ground } from "./ground.ts"
import { joists } from "./joists.ts"
import { limits } from "./limits.ts"
import { loads } from "./loads.ts"
import { patterns } from "./patterns.ts"
import { publishedStrengths } from "./published-strengths.ts"
import { same } from "./same.ts"
import { sheets } from "./sheets.ts"
import { size } from "./size.ts"
import { skidJoints } from "./skid-joints.ts"
import { skids } from "./skids.ts"
import { stages1 } from "./stages-1.ts"
import { stages2 } from "./stages-2.ts"
import { stoneBeds } from "./stone-beds.ts"
import { supports1 } from "./supports-1.ts"
import { supports2 } from "./supports-2.ts"
import { templates } from "./templates.ts"
import { timberKind } from "./timber-kind.ts"
import { wetSoil } from "./wet-soil.ts"

const texts = Object.assign(
  {},
  templates,
  stages1,
  stages2,
  drawings,
  gameSpace,
  size,
  ground,
  limits,
  frost,
  skids,
  supports1,
  supports2,
  loads,
  dig,
  stoneBeds,
  blocks,
  skidJoints,
  joists,
  blocking,
  sheets,
  timberKind,
  wetSoil,
  publishedStrengths,
)

/** The templates' texts in French. `number` writes a number as French does. */
export function french(number: (text: string) => string): CheckedDictionary {
  return dictionaryOf({ texts, patterns, same }, number)
}
