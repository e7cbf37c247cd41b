import { createMemo, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { CURVES_TABLE, type Curve, type MemberCurves as Member, memberCurves } from "./member-curves.ts"
import "./member-curves.css"

const WIDE = 400
const EDGE = 16
/** The member itself, above its diagrams, and the room of one diagram. */
const BEAM = 26
const HIGH = 84
const SIGN = 7
/** Half of what a diagram's line may take of its room. */
const REACH = 28

/** Moment, shear and sag along each kind of member, as the trade draws them: under a line with its supports and joints. */
export function MemberCurves() {
  const sheet = useSheet()
  const members = createMemo(() => memberCurves(sheet))
  return (
    <Show when={members().length > 0}>
      <section class="curves" aria-labelledby="curves-title">
        <h2 id="curves-title">
          <EntryLink name={CURVES_TABLE}>{sheet.label(CURVES_TABLE)}</EntryLink>
        </h2>
        <p class="quiet">{sheet.entry(CURVES_TABLE).why}</p>
        <p class="quiet">{spoken.curves.says}</p>
        <div class="curves-members">
          <For each={members()}>{(member) => <OneMember member={member} />}</For>
        </div>
      </section>
    </Show>
  )
}

function OneMember(props: { readonly member: Member }) {
  const across = (place: number) => {
    const { from, to } = props.member
    return EDGE + ((place - from) / (to - from || 1)) * (WIDE - 2 * EDGE)
  }
  const title = () => spoken.curves.of(props.member.member)
  return (
    <figure class="curves-member" data-curves={props.member.member}>
      <figcaption>
        <h3>{title()}</h3>
        <ul class="curves-greatest">
          <For each={props.member.curves}>
            {(curve) => (
              <li data-greatest={curve.quantity}>
                <EntryLink name={`${CURVES_TABLE}.${curve.quantity}`} row={curve.greatest.row}>
                  {curve.label}
                </EntryLink>
                {spoken.colon}
                {greatestWords(curve)}
              </li>
            )}
          </For>
        </ul>
      </figcaption>
      <svg
        viewBox={`0 0 ${WIDE} ${BEAM + 22 + props.member.curves.length * HIGH}`}
        role="img"
        aria-label={`${title()}. ${props.member.curves.map((curve) => `${curve.label}${spoken.colon}${greatestWords(curve)}`).join(". ")}`}
      >
        <path class="curves-beam" d={`M${EDGE} ${BEAM - 12}H${WIDE - EDGE}`} />
        <For each={props.member.supports}>
          {(place) => (
            <path
              class="curves-support"
              d={`M${across(place)} ${BEAM - 10}l${SIGN} ${SIGN * 1.6}h${-2 * SIGN}z`}
              data-support
            />
          )}
        </For>
        <For each={props.member.joints}>
          {(place) => <circle class="curves-joint" cx={across(place)} cy={BEAM - 12} r={4} data-joint />}
        </For>
        <For each={props.member.curves}>
          {(curve, index) => (
            <Diagram
              curve={curve}
              across={across}
              top={BEAM + 8 + index() * HIGH}
              supports={props.member.supports}
            />
          )}
        </For>
        <text class="curves-text" x={EDGE} y={BEAM + 16 + props.member.curves.length * HIGH}>
          {props.member.ends[0]}
        </text>
        <text
          class="curves-text"
          x={WIDE - EDGE}
          y={BEAM + 16 + props.member.curves.length * HIGH}
          text-anchor="end"
        >
          {props.member.ends[1]}
        </text>
      </svg>
    </figure>
  )
}

function Diagram(props: {
  readonly curve: Curve
  readonly across: (place: number) => number
  readonly top: number
  readonly supports: readonly number[]
}) {
  const middle = () => props.top + HIGH / 2 + 4
  /** A moment is drawn on the side that is pulled and a sag as it sags, both down where positive; a shear up. */
  const down = () => (props.curve.quantity === "shear" ? -1 : 1)
  const up = (value: number) => {
    const most = Math.abs(props.curve.greatest.value)
    return middle() + down() * (most === 0 ? 0 : value / most) * REACH
  }
  const line = () =>
    props.curve.points
      .map(({ at, value }) => `${props.across(at).toFixed(1)} ${up(value).toFixed(1)}`)
      .join("L")
  const ends = () => {
    const { points } = props.curve
    return [props.across(points[0]?.at ?? 0), props.across(points.at(-1)?.at ?? 0)] as const
  }
  return (
    <g data-curve={props.curve.quantity}>
      <For each={props.supports}>
        {(place) => <path class="curves-guide" d={`M${props.across(place)} ${props.top}v${HIGH}`} />}
      </For>
      <path class="curves-area" d={`M${ends()[0]} ${middle()}L${line()}L${ends()[1]} ${middle()}Z`} />
      <path class="curves-zero" d={`M${ends()[0]} ${middle()}H${ends()[1]}`} />
      <path class="curves-line" d={`M${line()}`} />
      <circle
        class="curves-dot"
        cx={props.across(props.curve.greatest.at)}
        cy={up(props.curve.greatest.value)}
        r={3}
      />
      <text class="curves-text" x={EDGE} y={props.top + 10}>
        <tspan class="curves-name">{props.curve.label}</tspan> {props.curve.greatest.text}
      </text>
    </g>
  )
}

const greatestWords = ({ greatest }: Curve): string => spoken.curves.greatest(greatest.text, greatest.place)
