import type { Case } from "../cutting/index.ts"

/** What `cut` itself says around a plan. */
export interface CutPhrases {
  readonly titles: Readonly<Record<Case["kind"], string>>
  readonly best: (amount: string) => string
  readonly notBest: (amount: string, bound: string, gap: string) => string
  readonly method: (method: string) => string
  readonly impossible: string
  readonly notFound: string
  readonly unknown: string
  readonly sheets: (count: number) => string
  readonly boards: (count: number) => string
  readonly inAll: (money: string) => string
  readonly buy: string
  readonly inThisOrder: string
  readonly piecesMeet: string
  readonly endJoints: string
  readonly skid: (number: number) => string
  readonly course: (number: number) => string
  readonly nowhere: string
  readonly packs: (count: number, size: number) => string
  readonly from: (supplier: string) => string
  readonly strip: (height: number, length: number) => string
  readonly block: (width: number, ripped: readonly (readonly [height: number, count: number])[]) => string
  readonly sheet: (width: number | "") => string
}

export const ENGLISH_CUT: CutPhrases = {
  titles: {
    cut: "boards to buy and how to cut them",
    splice: "where pieces meet, and how to cut them",
    sheet: "where sheets meet, and how to cut them",
    buy: "what to buy from whom",
  },
  best: (amount) => `${amount}, proven best: nothing comes to less.`,
  notBest: (amount, bound, gap) => `${amount}; no plan comes to less than ${bound} (gap ${gap} %).`,
  method: (method) => `Method: ${method}.`,
  impossible: "There is no plan.",
  notFound: "No plan was found, and none was proven not to exist.",
  unknown: "unknown",
  sheets: (count) => (count === 1 ? "1 sheet" : `${count} sheets`),
  boards: (count) => (count === 1 ? "1 board" : `${count} boards`),
  inAll: (money) => `${money} in all`,
  buy: "Buy:",
  inThisOrder: "Cut, in this order:",
  piecesMeet: "Pieces meet at:",
  endJoints: "End joints at:",
  skid: (number) => `skid ${number}`,
  course: (number) => `course ${number}`,
  nowhere: "nowhere: one piece",
  packs: (count, size) => `${count} × ${size === 1 ? "one" : `pack of ${size}`}`,
  from: (supplier) => `from ${supplier}`,
  strip: (height, length) => `strip ${height} high, ${length} long`,
  block: (width, ripped) =>
    `block ${width}, ripped into ${ripped.map(([height, count]) => `${count} of ${height}`).join(" and ")}`,
  sheet: (width) => `sheet ${width} high`,
}
