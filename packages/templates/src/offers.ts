/** What a template is called, before all that is in it is fetched. */
export interface Offer {
  readonly id: string
  readonly title: string
  /** One line on when it fits. */
  readonly says: string
}

/** Every template: those of whole jobs in the order in which they are offered, then those for one answer. */
export const OFFERS = {
  "game-table-platform": {
    id: "game-table-platform",
    title: "Game table platform",
    says: "A low platform for an outdoor game table on a sloping lawn, with a surface of hard tiles, low edge boards and a net that stops the ball.",
  },
  "shed-base": {
    id: "shed-base",
    title: "Shed base",
    says: "A level timber floor for a garden shed on sloping ground, lying on skids on a pad of tamped stone.",
  },
  boardwalk: {
    id: "boardwalk",
    title: "Boardwalk",
    says: "A level walk of boards over gently falling or soft ground: boards across stringers, on sleepers on strips of stone, with a ramp or steps at either end.",
  },
  "ground-level-deck": {
    id: "ground-level-deck",
    title: "Ground-level deck",
    says: "A low deck that stands free in the garden: boards on joists, on beams that lie on pads. With cost, weight and the steps at both ends.",
  },
  "greenhouse-floor": {
    id: "greenhouse-floor",
    title: "Greenhouse floor",
    says: "A level timber floor that carries a greenhouse: boards with gaps that drain, on joists on bearers on slabs, with mesh against animals.",
  },
  "joist-span": {
    id: "joist-span",
    title: "Joist span",
    says: "How far a joist may span and hang over: the calculation behind the published span tables, with every factor in sight.",
  },
  "beam-span": {
    id: "beam-span",
    title: "Beam span",
    says: "How far a beam under deck joists may span between posts: the calculation behind the published table, with every factor in sight.",
  },
  "panel-span": {
    id: "panel-span",
    title: "Sheets and boards on joists",
    says: "What a floor sheet carries between joists, worked out and as recommended, and the joist spacing that deck boards want.",
  },
  "post-height": {
    id: "post-height",
    title: "Post height",
    says: "What a post of your height carries straight down before it bows out sideways, by allowable stress, with every step in sight.",
  },
} as const satisfies Readonly<Record<string, Offer>>

export type TemplateId = keyof typeof OFFERS
