import { type Bounds, type Drawing, type Drawn, resolveDrawing } from "@pegbook/engine"
import { createMemo, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"
import { fit } from "../drawings/camera.ts"
import { dimensionsIn, marginsFor } from "../drawings/dimension-lines.ts"
import "../drawings/drawings.css"
import { Key } from "../drawings/Key.tsx"
import { Labels } from "../drawings/Labels.tsx"
import { labelsOf } from "../drawings/label-wishes.ts"
import { keyOf, layerNames, layerWishes } from "../drawings/layer-names.ts"
import { namePegs } from "../drawings/peg-names.ts"
import { placeLabels } from "../drawings/place-labels.ts"
import { Strokes } from "../drawings/Strokes.tsx"
import { obstaclesOf } from "../drawings/segments.ts"
import { MM, type OnPaper, PAPERS, type Paper, scaleBar, toScale } from "./to-scale.ts"

/** Room for the scale bar, and where it lies in that. */
const BAR_ROOM = 34
const BAR_EDGE = 4
const BAR_HEIGHT = 6
/** A picture at an angle is not measured from: it need not fill the sheet. */
const PICTORIAL_HEIGHT = 130 * MM

/** One drawing of the build book: to scale on the paper chosen, or, at an angle, as large as is of use. */
export function PrintedDrawing(props: { readonly drawing: Drawing; readonly paper: Paper }) {
  const sheet = useSheet()
  const drawn = createMemo(() => resolveDrawing(props.drawing, sheet, { apart: true }))
  return (
    <Show when={drawn().bounds}>
      {(bounds) => <OnSheet drawing={props.drawing} drawn={drawn()} bounds={bounds()} paper={props.paper} />}
    </Show>
  )
}

function OnSheet(props: {
  readonly drawing: Drawing
  readonly drawn: Drawn
  readonly bounds: Bounds
  readonly paper: Paper
}) {
  const sheet = useSheet()
  const pictorial = () => props.drawing.look === "pictorial"
  const hidden = createMemo(
    () => new Set(props.drawing.layers.filter((one) => one.startsHidden).map(({ id }) => id)),
  )
  const shown = createMemo(() => props.drawn.shapes.filter(({ layer }) => !hidden().has(layer)))
  const onPaper = createMemo((): OnPaper => {
    const { wide, high } = PAPERS[props.paper]
    const room = { width: wide * MM, height: high * MM }
    const margins = marginsFor(shown(), room.width)
    if (!pictorial()) return toScale(props.bounds, { ...margins, bottom: margins.bottom + BAR_ROOM }, room)
    const fitted = fit(props.bounds, margins, room.width, PICTORIAL_HEIGHT)
    return { ratio: 0, camera: fitted, width: fitted.width, height: fitted.height, turned: false }
  })
  const camera = () => onPaper().camera
  const dimensions = createMemo(() => dimensionsIn(shown(), props.bounds, camera()))
  const window = () => ({
    left: 0,
    top: 0,
    right: onPaper().width,
    bottom: onPaper().height - (pictorial() ? 0 : BAR_ROOM),
  })
  const layers = createMemo(() =>
    pictorial() ? layerNames(props.drawing.layers, shown(), camera(), window()) : [],
  )
  const pegs = createMemo(() => namePegs(shown(), props.bounds, camera(), window()))
  const labels = createMemo(() =>
    placeLabels(
      [
        ...labelsOf(pegs().shapes, dimensions(), camera(), undefined),
        ...layerWishes(layers(), shown(), camera()),
      ],
      window(),
      obstaclesOf(shown(), dimensions(), camera()),
    ),
  )
  /** As it lies on the paper. */
  const size = () => {
    const { width, height, turned } = onPaper()
    return turned ? { width: height, height: width } : { width, height }
  }
  const title = () => `printed-${props.drawing.id}`
  return (
    <figure class="book-drawing" data-printed={props.drawing.id} data-ratio={onPaper().ratio}>
      <figcaption>
        <h3>{props.drawing.title}</h3>
        <p class="quiet">
          {props.drawing.says}{" "}
          <strong>
            {pictorial() ? spoken.buildBook.notToScale : spoken.buildBook.scale(onPaper().ratio)}
            {onPaper().turned ? ` ${spoken.buildBook.turned}` : ""}
          </strong>
        </p>
      </figcaption>
      <svg
        role="img"
        aria-labelledby={title()}
        width={`${size().width / MM}mm`}
        height={`${size().height / MM}mm`}
        viewBox={`0 0 ${size().width} ${size().height}`}
      >
        <title id={title()}>{props.drawing.title}</title>
        <g transform={onPaper().turned ? `translate(${size().width} 0) rotate(90)` : undefined}>
          <Strokes
            drawing={props.drawing}
            shown={shown()}
            camera={camera()}
            dimensions={dimensions()}
            hatch={`hatch-${props.drawing.id}`}
            inked
          />
          <Labels labels={labels()} />
          <Show when={!pictorial()}>
            <Bar bar={scaleBar(camera(), sheet.unitSystem())} top={onPaper().height - BAR_ROOM / 2} />
          </Show>
        </g>
      </svg>
      <Key lines={[...pegs().key, ...keyOf(layers())]} />
    </figure>
  )
}

/** Black, white, black, white: so long are so many feet or metres. */
function Bar(props: {
  readonly bar: { readonly text: string; readonly length: number }
  readonly top: number
}) {
  const quarter = () => props.bar.length / 4
  return (
    <g class="scale-bar" data-scale-bar={props.bar.text}>
      <rect x={BAR_EDGE} y={props.top} width={props.bar.length} height={BAR_HEIGHT} />
      <path
        d={[0, 2]
          .map((at) => `M${BAR_EDGE + at * quarter()} ${props.top}h${quarter()}v${BAR_HEIGHT}h${-quarter()}z`)
          .join("")}
      />
      <text x={BAR_EDGE + props.bar.length + 8} y={props.top + BAR_HEIGHT / 2} dominant-baseline="central">
        {props.bar.text}
      </text>
    </g>
  )
}
