import { spoken } from "../../text/spoken.ts"
import { Edge } from "./Edge.tsx"
import { Near } from "./Near.tsx"
import { Span } from "./Span.tsx"
import "./explore.css"

/** What would come of other values: many of them at once, and how far one can go. */
export default function Explore() {
  return (
    <div class="explore">
      <h1>{spoken.explore.title}</h1>
      <p>{spoken.explore.says}</p>
      <Span />
      <Edge />
      <Near />
    </div>
  )
}
