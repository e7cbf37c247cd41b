import type { Entry, Section } from "@pegbook/engine"
import {
  ARITHMETIC,
  COMMON_PRACTICE,
  GEOMETRY,
  LOCATE_CITY,
  LOCATE_SERVICES,
  LOCATE_WORKS,
  STATES_OF_SOIL,
  STRIP_TOPSOIL,
  SWELL_EARTH,
  SWELL_FIELD_MANUAL,
  USER,
} from "../sources.ts"

/** Nothing is dug before buried cables and pipes are marked. Needs nothing. */
const servicesHold: readonly Entry[] = [
  {
    kind: "input",
    name: "services_located",
    label: "Buried cables and pipes are marked",
    why: "Enter yes when the service has been and every line is marked on the ground, or has told you in writing that there is none. Until then nothing is dug, stakes included.",
    sources: [USER, LOCATE_SERVICES, LOCATE_WORKS],
    cautions: [
      "Ask the service that marks buried lines before you dig, however shallow; it asks for some days' notice, and mostly costs nothing. Lines of your own, to a shed or a lamp, are not on its maps.",
      "Dig by hand within two feet of a mark. A cable that was hit is live until its owner says that it is not.",
    ],
    measure: "yes_no",
    default: null,
  },
  {
    kind: "input",
    name: "locate_notice_days",
    label: "Notice that the service asks for",
    why: "Working days before it comes. Two or three are usual; one city asks for five, another place for a week. Ask yours, and start nothing else in the ground meanwhile.",
    sources: [LOCATE_SERVICES, LOCATE_CITY, USER],
    measure: "count",
    default: "3",
    least: "0",
    most: "60",
  },
  {
    kind: "formula",
    name: "steps_before_digging",
    label: "Steps up to the first spade",
    why: "One when the lines are marked: dig. Two while they are not: have them marked, then dig.",
    sources: [ARITHMETIC],
    measure: "count",
    formula: "IF(services_located; 1; 2)",
  },
  {
    kind: "check",
    name: "services_check",
    label: "May you dig?",
    why: "A cut cable or gas pipe can kill, and what it costs is yours.",
    sources: [LOCATE_SERVICES, LOCATE_WORKS],
    measure: "count",
    demand: "steps_before_digging",
    limit: "1",
    sense: "at_most",
    advice: [
      "Do not dig yet. Ask the service at least {locate_notice_days} working days ahead, tell it {greatest_dig} as the depth, and enter yes when its marks are on the ground.",
    ],
  },
]

/** The hold on digging, for a template whose digging is not `dig`. Needs greatest_dig. */
export const services: Section = {
  id: "services",
  title: "Before anything is dug",
  says: "Where cables and pipes lie under the ground comes first.",
  entries: servicesHold,
}

/** What becomes of the soil. Needs dug_volume, rounding_tolerance. */
export const spoil: readonly Entry[] = [
  {
    kind: "input",
    name: "spoil_loose_factor",
    label: "Soil swells to",
    why: "Dug soil takes more room than it did in the ground: loam and common earth about a quarter more, clay nearly half.",
    sources: [SWELL_EARTH, SWELL_FIELD_MANUAL, USER],
    measure: "ratio",
    default: "1.25",
    least: "1",
    most: "2",
  },
  {
    kind: "formula",
    name: "dug_volume_loose",
    label: "Soil dug, loose",
    why: "What you barrow away or spread: plan where the heap goes before the first spade.",
    sources: [STATES_OF_SOIL, SWELL_EARTH],
    measure: "bulk_volume",
    formula: "dug_volume * spoil_loose_factor",
  },
  {
    kind: "input",
    name: "barrow_volume",
    label: "One barrow load",
    why: "A builder's barrow, not heaped: soil and stone are heavy.",
    sources: [COMMON_PRACTICE, USER],
    measure: "volume",
    default: "2.5 ft3",
    least: "0.5 ft3",
    most: "10 ft3",
  },
  {
    kind: "formula",
    name: "spoil_barrows",
    label: "Barrow loads of soil",
    why: "How often somebody walks to the heap.",
    sources: [ARITHMETIC],
    measure: "count",
    formula: "MAX(0; ROUNDUP(dug_volume_loose / barrow_volume - rounding_tolerance; 0))",
  },
]

/** The holes under the supports, and the soil that comes out of them. */
export const dig: Section = {
  id: "dig",
  title: "Digging",
  says: "How deep each hole is, and how much soil there is to put somewhere.",
  entries: [
    ...servicesHold,
    {
      kind: "input",
      name: "dig_min",
      label: "Dig at least",
      why: "Turf and topsoil rot and shrink under a load; every hole goes down to firm soil.",
      sources: [STRIP_TOPSOIL, USER],
      measure: "length",
      default: "4 in",
      least: "0 in",
      most: "4 ft",
    },
    {
      kind: "formula",
      name: "greatest_dig",
      label: "Deepest hole",
      why: "Tell this depth to the service that marks buried cables and pipes.",
      sources: [ARITHMETIC, LOCATE_SERVICES],
      measure: "length",
      formula: "MAX(supports.dig)",
    },
    {
      kind: "formula",
      name: "least_dig",
      label: "Shallowest hole",
      why: "Even here the turf comes out.",
      sources: [ARITHMETIC],
      measure: "length",
      formula: "MIN(supports.dig)",
    },
    {
      kind: "formula",
      name: "dug_volume",
      label: "Soil dug, in the ground",
      why: "The holes together. Cuts are measured in place.",
      sources: [GEOMETRY, STATES_OF_SOIL],
      measure: "volume",
      formula: "SUM(supports.dig_volume)",
    },
    ...spoil,
  ],
}
