import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { SPECIES_NAMES, woodSpecies } from "../figures/wood-species.ts"
import { USER } from "../sources.ts"
import { SHRINKAGE_RULE, SPECIFIC_GRAVITY } from "../sources-deck.ts"
import { practice } from "../sources-frame.ts"

/** What the timber is made of, and how wet it is: weights and gaps lean on it. Needs nothing. */
export const wood: Section = {
  id: "wood",
  title: "The wood",
  says: "Which wood it is and how wet: it decides how heavy the timber is and how far gaps open.",
  entries: [
    {
      kind: "input",
      name: "wood_species",
      label: "Species",
      measure: "text",
      default: "loblolly pine",
      choices: SPECIES_NAMES,
      why: "Ask the yard. Most treated softwood of the American south is loblolly pine or its near kin.",
      sources: [USER],
    },
    woodSpecies,
    {
      kind: "input",
      name: "moisture_laid",
      label: "Moisture when it is laid",
      measure: "share",
      default: "19 %",
      least: "0 %",
      most: "100 %",
      why: "Fresh treated timber is soaking wet, kiln-dried timber has 19 % at most. A cheap meter with two pins shows it.",
      sources: [USER, practice("kiln-dried timber is sold at 19 % or less")],
    },
    {
      kind: "input",
      name: "moisture_dry",
      label: "Moisture when it has dried",
      measure: "share",
      default: "12 %",
      least: "0 %",
      most: "30 %",
      why: "What timber comes to outdoors after a summer, in the air of your place.",
      sources: [USER, practice("timber outdoors settles near 12 %")],
    },
    {
      kind: "figure",
      name: "fibre_saturation",
      label: "Wood begins to shrink at",
      measure: "share",
      value: "30 %",
      why: "Above this the water is free in the cells, and drying changes the weight alone. Below it the wood shrinks.",
      sources: [SHRINKAGE_RULE],
    },
    {
      kind: "formula",
      name: "wood_shrinkage",
      label: "Shrinkage of the width, soaking wet to bone dry",
      measure: "share",
      formula: "INDEX(wood_species_figures.shrinkage; MATCH(wood_species; wood_species_figures.species; 0))",
      why: "Of this species, from the table.",
      sources: [SHRINKAGE_RULE],
    },
    {
      kind: "formula",
      name: "width_when_laid",
      label: "Width when laid, as a share of soaking wet",
      measure: "share",
      formula:
        "1 - wood_shrinkage * (fibre_saturation - MIN(moisture_laid; fibre_saturation)) / fibre_saturation",
      why: "The part of the shrinkage that lies behind it already.",
      sources: [SHRINKAGE_RULE],
    },
    {
      kind: "formula",
      name: "width_when_dry",
      label: "Width when dry, as a share of soaking wet",
      measure: "share",
      formula:
        "1 - wood_shrinkage * (fibre_saturation - MIN(moisture_dry; fibre_saturation)) / fibre_saturation",
      why: "The same at the end.",
      sources: [SHRINKAGE_RULE],
    },
    {
      kind: "formula",
      name: "wood_gravity",
      label: "Specific gravity",
      measure: "ratio",
      formula: "INDEX(wood_species_figures.gravity; MATCH(wood_species; wood_species_figures.species; 0))",
      why: "Of this species, from the table.",
      sources: [SPECIFIC_GRAVITY],
    },
  ],
}

/** The wood, where no boards lie side by side: nothing asks how far it shrinks. */
export const woodWithoutBoards: Section = adapt(wood, {
  without: ["fibre_saturation", "wood_shrinkage", "width_when_laid", "width_when_dry"],
})
