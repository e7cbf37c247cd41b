import type { JSX } from "solid-js"
import { spoken } from "../../text/spoken.ts"
import { AnyPlatform } from "./sketches/AnyPlatform.tsx"
import { Boardwalk } from "./sketches/Boardwalk.tsx"
import { GameTable } from "./sketches/GameTable.tsx"
import { Greenhouse } from "./sketches/Greenhouse.tsx"
import { GroundLevelDeck } from "./sketches/GroundLevelDeck.tsx"
import { Shed } from "./sketches/Shed.tsx"

const SKETCHES: Readonly<Record<string, () => JSX.Element>> = {
  "game-table-platform": GameTable,
  "shed-base": Shed,
  boardwalk: Boardwalk,
  "ground-level-deck": GroundLevelDeck,
  "greenhouse-floor": Greenhouse,
}

/** What a template builds, as a builder would sketch it; of one without a sketch, any platform. Not to scale. */
export function Sketch(props: { readonly template: string }) {
  const says = () => spoken.sketches[props.template] ?? spoken.sketches.other
  return (
    <svg class="sketch" viewBox="0 0 320 180" role="img" aria-label={says()}>
      {(SKETCHES[props.template] ?? AnyPlatform)()}
    </svg>
  )
}
