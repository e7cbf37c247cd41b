import type { Column, Entry, Section, Source } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY, USER } from "../sources.ts"
import { practice, SCREW_BITE, SCREW_LENGTH } from "../sources-frame.ts"
import { fastenerCorrosion } from "./fastener-corrosion.ts"
import { blockingEnds, edgeBoardScrews, joistEnds, rimJointBlocks, skidCrossings } from "./frame-screws.ts"
import { type Hardware, hardwareOf } from "./hardware.ts"
import { rowChoice } from "./row-choice.ts"
import { frameScrewBoxes, spareScrews, surfaceScrewBoxes } from "./screw-boxes.ts"
import { sheetScrews } from "./sheet-screws.ts"

/** Which box a screw comes out of. */
export type Screw = "frame screws" | "surface screws"

/** One kind of place where two pieces are screwed together. `places`, `each` and `through` are formulas. */
export interface Joint {
  /** In the reader's words, and once in a template: "joist end, through the rim". */
  readonly joint: string
  readonly screw: Screw
  /** How many such places there are. */
  readonly places: string
  /** Screws at one place. */
  readonly each: string
  /** What a screw goes through before it bites. */
  readonly through: string
}

/** What the joints of one part of the frame bring to the fixings. */
export interface JointGroup {
  readonly entries: readonly Entry[]
  readonly joints: readonly Joint[]
  readonly hardware?: readonly Hardware[]
}

/** Gauges by box, from habit: a size to ask for, not a strength. */
const GAUGES: Readonly<Record<Screw, string>> = { "frame screws": "No. 10", "surface screws": "No. 8" }

const ofRow = (joints: readonly Joint[], formula: (joint: Joint) => string): string =>
  rowChoice(
    "joint",
    joints.map((joint) => ({ row: joint.joint, formula: formula(joint) })),
  )

function columnsOf(joints: readonly Joint[]): readonly Column[] {
  const geometry: readonly Source[] = [GEOMETRY]
  return [
    {
      name: "joint",
      label: "Joint",
      measure: "text",
      values: joints.map(({ joint }) => joint),
      why: "Where the screws go.",
      sources: geometry,
    },
    {
      name: "used",
      label: "Out of which box",
      measure: "text",
      values: joints.map(({ screw }) => screw),
      why: "Frame screws are long and stout; surface screws hold what you walk on.",
      sources: [practice("one box for the frame, one for the surface")],
    },
    {
      name: "size",
      label: "Gauge",
      measure: "text",
      values: joints.map(({ screw }) => GAUGES[screw]),
      why: "The thickness that is usual for such a joint. It is a habit, not a calculation: where the joint carries a load, its maker or a designer says.",
      sources: [practice("No. 10 in frames, No. 8 in surfaces")],
    },
    {
      name: "places",
      label: "Places",
      measure: "count",
      formula: ofRow(joints, ({ places }) => places),
      why: "Counted from the crossings, the ends and the edges; never from the area.",
      sources: geometry,
    },
    {
      name: "each",
      label: "Screws at a place",
      measure: "count",
      formula: ofRow(joints, ({ each }) => each),
      why: "As chosen for the joint.",
      sources: [USER],
    },
    {
      name: "number",
      label: "Screws",
      measure: "count",
      formula: "places * each",
      why: "Places times screws at a place.",
      sources: [ARITHMETIC],
    },
    {
      name: "through",
      label: "Goes through",
      measure: "length",
      formula: ofRow(joints, ({ through }) => through),
      why: "The piece that is held. This much of the screw holds nothing yet.",
      sources: geometry,
    },
    {
      name: "least",
      label: "Shortest that holds",
      measure: "length",
      formula: "through + screw_bite",
      why: "Through the first piece and far enough into the second.",
      sources: [SCREW_BITE],
    },
    {
      name: "length",
      label: "Length to ask for",
      measure: "length",
      formula: "CEILING(least; screw_length_step)",
      why: "The next length that is made.",
      sources: [SCREW_LENGTH],
    },
    {
      name: "coating",
      label: "Metal or coating",
      measure: "text",
      formula: "screw_coating",
      why: "As chosen above; its check says whether the timber allows it.",
      sources: [USER],
    },
  ]
}

/** The entries that hold for screws of every kind, then the table, a row a joint. */
function screwTable(joints: readonly Joint[]): readonly Entry[] {
  return [
    {
      kind: "figure",
      name: "screw_bite",
      label: "Thread in the timber below, at least",
      measure: "length",
      value: "1 1/2 in",
      why: "A screw holds by what is in the lower piece.",
      sources: [SCREW_BITE],
    },
    {
      kind: "figure",
      name: "screw_length_step",
      label: "Screws are made every",
      measure: "length",
      value: "1/2 in",
      why: "The length worked out is rounded up to a length that can be bought.",
      sources: [SCREW_LENGTH, practice("lengths by half inches")],
    },
    {
      kind: "table",
      name: "fixings",
      label: "Screws, joint by joint",
      rows: { kind: "figures" },
      why: "Every joint has a place, a number and a length of its own. Where screws are guessed from the area, the edges and the end joists are forgotten.",
      sources: [GEOMETRY],
      columns: columnsOf(joints),
    },
  ]
}

interface Box {
  readonly label: string
  readonly count: string
  readonly perBox: string
  readonly boxes: string
}

const BOXES: Readonly<Record<Screw, Box>> = {
  "frame screws": {
    label: "Frame screws",
    count: "frame_screw_count",
    perBox: "frame_screws_per_box",
    boxes: "frame_screw_boxes",
  },
  "surface screws": {
    label: "Surface screws",
    count: "screw_count",
    perBox: "screws_per_box",
    boxes: "screw_boxes",
  },
}

/** How many screws of one box. */
function countOf(screw: Screw): Entry {
  const { label, count } = BOXES[screw]
  return {
    kind: "formula",
    name: count,
    label,
    measure: "count",
    formula: `SUMIF(fixings.used; "${screw}"; fixings.number)`,
    why: "Over all joints that take them.",
    sources: [GEOMETRY],
  }
}

/** A row a box: how long its screws have to be, and how many are left over. */
function boxTable(joints: readonly Joint[], screws: readonly Screw[]): Entry {
  const ofScrew = (formula: (screw: Screw) => string): string =>
    rowChoice(
      "screw",
      screws.map((screw) => ({ row: screw, formula: formula(screw) })),
    )
  const thickest = (screw: Screw): string =>
    `MAX(${joints
      .filter((joint) => joint.screw === screw)
      .map(({ through }) => through)
      .join("; ")})`
  return {
    kind: "table",
    name: "screw_kinds",
    label: "Screws, box by box",
    rows: { kind: "figures" },
    why: "One length that serves every joint of a box saves a second kind; the joints' own table says what each alone would take.",
    sources: [GEOMETRY],
    columns: [
      {
        name: "screw",
        label: "Box",
        measure: "text",
        values: screws,
        why: "Frame screws are long and stout; surface screws hold what you walk on.",
        sources: [practice("one box for the frame, one for the surface")],
      },
      {
        name: "least",
        label: "Shortest that holds",
        measure: "length",
        formula: `${ofScrew(thickest)} + screw_bite`,
        why: "Through the thickest piece that they hold, and far enough into the next.",
        sources: [GEOMETRY, SCREW_BITE],
      },
      {
        name: "left",
        label: "Left over",
        measure: "count",
        formula: ofScrew((screw) => `${BOXES[screw].boxes} * ${BOXES[screw].perBox} - ${BOXES[screw].count}`),
        why: "If none is lost. Where it is large, a smaller box may do.",
        sources: [GEOMETRY],
      },
    ],
  }
}

/**
 * Screws, ties and hangers of a template, counted where they go: the table `fixings` with a row a joint, then what each
 * box has to hold. A template lists the groups that its frame has; a joint without entries of its own may be
 * given as `{ entries: [], joints: [...] }`.
 *
 * Gives `screw_count`, `screws_to_buy`, `screw_boxes` where a joint takes surface screws, and `frame_screw_count` and its
 * kin where one takes frame screws; `screw_coating` and `fastener_corrosion_check` always.
 * Needs: what the groups name, rounding_tolerance.
 */
export function fixingsOf(groups: readonly JointGroup[]): Section {
  const joints = groups.flatMap((group) => group.joints)
  const hardware = groups.flatMap((group) => group.hardware ?? [])
  const screws = (["surface screws", "frame screws"] as const).filter((screw) =>
    joints.some((joint) => joint.screw === screw),
  )
  return {
    id: "fixings",
    title: "Ties and screws",
    says: "Screws are counted where they are driven, one kind for the frame and one for the surface, and then rounded up to whole boxes.",
    entries: [
      ...fastenerCorrosion,
      ...groups.flatMap((group) => group.entries),
      ...screwTable(joints),
      ...screws.map(countOf),
      spareScrews,
      ...(screws.includes("surface screws") ? surfaceScrewBoxes : []),
      ...(screws.includes("frame screws") ? frameScrewBoxes : []),
      boxTable(joints, screws),
      ...hardwareOf(hardware),
    ],
  }
}

/** The fixings of a platform of joists on skids under sheets, with edge boards. */
export const fixings: Section = fixingsOf([
  skidCrossings,
  joistEnds,
  blockingEnds,
  rimJointBlocks,
  edgeBoardScrews,
  sheetScrews,
])
