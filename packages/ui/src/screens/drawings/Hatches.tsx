/** Fills as drawing standards have them: strokes in threes for soil, pebbles for stone, dots for concrete. */
export function Hatches(props: { readonly id: string; readonly scale: number }) {
  const still = () => `scale(${1 / props.scale})`
  return (
    <defs>
      <pattern
        id={`${props.id}-soil`}
        width="24"
        height="24"
        patternUnits="userSpaceOnUse"
        patternTransform={still()}
      >
        <path class="hatch-stroke" d="M0 8 8 0M0 12 12 0M0 16 16 0M12 24 24 12M16 24 24 16M20 24 24 20" />
      </pattern>
      <pattern
        id={`${props.id}-stone`}
        width="18"
        height="14"
        patternUnits="userSpaceOnUse"
        patternTransform={still()}
      >
        <rect class="hatch-stone" width="18" height="14" />
        <path
          class="hatch-stroke"
          d="M2 4.5 4 2 7.5 2.5 8 5.5 5 6.5ZM11 3.5 13.5 1.5 16.5 3.5 15 6 12 6ZM5.5 11 8.5 8.5 11 10 10.5 12.5 7 13ZM14 10 16.5 9.5 16.5 12 14.5 12.5Z"
        />
      </pattern>
      <pattern
        id={`${props.id}-concrete`}
        width="16"
        height="16"
        patternUnits="userSpaceOnUse"
        patternTransform={still()}
      >
        <rect class="hatch-concrete" width="16" height="16" />
        <path class="hatch-dots" d="M3 3h.01M11 5h.01M6 10h.01M13 13h.01M2 14h.01" />
        <path class="hatch-stroke" d="M7 4 9 4 8 2.4ZM10 9.5 12 9.5 11 8Z" />
      </pattern>
      <pattern
        id={`${props.id}-end`}
        width="8"
        height="8"
        patternUnits="userSpaceOnUse"
        patternTransform={still()}
      >
        <rect class="hatch-end" width="8" height="8" />
        <path class="hatch-stroke" d="M0 8 8 0M-2 2 2-2M6 10 10 6" />
      </pattern>
      <pattern
        id={`${props.id}-net`}
        width="8"
        height="8"
        patternUnits="userSpaceOnUse"
        patternTransform={still()}
      >
        <path class="hatch-mesh" d="M0 0 8 8M8 0 0 8" />
      </pattern>
    </defs>
  )
}

const HATCHED: ReadonlySet<string> = new Set(["soil", "stone", "concrete", "end", "net"])

/** The hatch of a material that has one, out of those with this id. */
export const hatchOf = (fill: string, id: string): string | undefined =>
  HATCHED.has(fill) ? `url(#${id}-${fill})` : undefined
