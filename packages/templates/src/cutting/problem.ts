import { z } from "zod"

/** Lengths and counts stay small enough for every sum and product of the checker to be exact in a double. */
const MOST_LENGTH = 10_000_000
const MOST_COUNT = 100_000
const MOST_PRICE = 100_000_000

const length = z.int().min(1).max(MOST_LENGTH)
const lengthOrNone = z.int().min(0).max(MOST_LENGTH)
const count = z.int().min(0).max(MOST_COUNT)
const price = z.int().min(0).max(MOST_PRICE)
const name = z.string().min(1).max(200)
/** The most to be had of something; `null` where there is no limit. */
const available = count.nullable().default(null)

const stock = z.object({
  id: name,
  length,
  price,
  available,
  /** Boards in a thousand that are bought over what is used, for those that turn out bad. */
  cullPermille: z.int().min(0).max(10_000).default(0),
})

const boardList = z.object({
  id: name,
  kind: z.literal("cut"),
  unit: z.string().max(40).default(""),
  kerf: lengthOrNone,
  endTrim: lengthOrNone.default(0),
  stocks: z.array(stock).max(200),
  pieces: z.array(z.object({ id: name.optional(), length, quantity: count })).max(2000),
})

const splicedLines = z.object({
  id: name,
  kind: z.literal("splice"),
  unit: z.string().max(40).default(""),
  kerf: lengthOrNone,
  endTrim: lengthOrNone.default(0),
  /** Centres of the supports, ascending. */
  supports: z.array(lengthOrNone).min(2).max(60),
  /** Length of bearing that each support offers along the line. */
  bearing: z.array(lengthOrNone).min(2).max(60),
  minBearing: lengthOrNone,
  minBaysForPiece: z.int().min(1).max(60),
  minStagger: lengthOrNone,
  skids: z.int().min(1).max(100),
  stocks: z.array(stock).max(200),
})

const sheetLayout = z.object({
  id: name,
  kind: z.literal("sheet"),
  unit: z.string().max(40).default(""),
  platform: z.object({ acrossJoists: length, alongJoists: length }),
  joistSpacing: length,
  sheet: z.object({ length, width: length }),
  gap: lengthOrNone,
  kerf: lengthOrNone,
  minBaysForPiece: z.int().min(1).max(60),
  minRip: lengthOrNone.default(0),
  stagger: lengthOrNone,
  /** Heights of the courses, bottom up, a gap apart. */
  courses: z.array(length).min(1).max(60),
  /** How far an end joint may lie off the centre of its support, for sheets that are made short. */
  jointTolerance: lengthOrNone.default(0),
})

const buying = z.object({
  id: name,
  kind: z.literal("buy"),
  money: z.string().max(40).default(""),
  oneSupplierForEachLine: z.boolean().default(false),
  suppliers: z
    .array(
      z.object({
        id: name,
        deliveryFee: price.default(0),
        freeDeliveryFrom: price.nullable().default(null),
        taxBasisPoints: z.int().min(0).max(10_000).default(0),
        deliveryTaxed: z.boolean().default(false),
        minimumOrder: price.default(0),
      }),
    )
    .max(50),
  lines: z.array(z.object({ id: name, need: count })).max(500),
  offers: z
    .array(
      z.object({
        line: name,
        supplier: name,
        packSize: z.int().min(1).max(MOST_COUNT),
        breaks: z
          .array(z.object({ fromPacks: z.int().min(1).max(MOST_COUNT), pricePerPack: price }))
          .min(1)
          .max(20),
        availablePacks: available,
      }),
    )
    .max(5000),
})

/** A problem of cutting, splicing, laying sheets or buying. All lengths are whole numbers of one unit; prices are whole cents. */
export const CaseSchema = z.discriminatedUnion("kind", [boardList, splicedLines, sheetLayout, buying])

export type Stock = z.infer<typeof stock>
export type BoardList = z.infer<typeof boardList>
export type SplicedLines = z.infer<typeof splicedLines>
export type SheetLayout = z.infer<typeof sheetLayout>
export type Buying = z.infer<typeof buying>
export type Case = z.infer<typeof CaseSchema>

export const KINDS = ["cut", "sheet", "splice", "buy"] as const
