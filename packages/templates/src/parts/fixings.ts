import type { Section } from "@pegbook/engine"
import { fastenerCorrosion } from "./fastener-corrosion.ts"
import { frameScrews } from "./frame-screws.ts"
import { screwBoxes } from "./screw-boxes.ts"
import { sheetScrews } from "./sheet-screws.ts"

/**
 * Ties and screws, counted where they go, and whether the timber eats them.
 *
 * Needs: platform_area, platform_width, skids, skid_count, joists, joist_count, joist_thickness, rim_thickness,
 * blocking_rows, blocking_count, the rim blocks, the edge boards, sheet_rows, sheet_thickness, rounding_tolerance.
 */
export const fixings: Section = {
  id: "fixings",
  title: "Ties and screws",
  says: "Screws are counted where they are driven, one kind for the frame and one for the sheets, and then rounded up to whole boxes.",
  entries: [...fastenerCorrosion, ...frameScrews, ...sheetScrews, ...screwBoxes],
}
