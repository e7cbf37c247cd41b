import { keyOf } from "./bought-things.ts"

/** Where a thing is found in a shop, in the order of a walk through a yard. */
export const SHOP_GROUPS = [
  "timber",
  "sheets and surface",
  "masonry and stone",
  "ground works",
  "fixings",
  "treatment",
  "nets and ropes",
  "tools and safety",
] as const

export type ShopGroup = (typeof SHOP_GROUPS)[number]

const THINGS: Readonly<Record<ShopGroup, readonly string[]>> = {
  timber: ["guard post"],
  "sheets and surface": ["sheet", "tile"],
  "masonry and stone": ["block", "slab", "stone", "80 lb bag of concrete"],
  "ground works": ["fabric", "fabric pin", "edging", "edging stake", "mesh roll"],
  fixings: [
    "screws",
    "frame screws",
    "tie",
    "box of 100 connector nails",
    "box of staples",
    "guard bolt",
    "net bolt",
    "square washer",
    "guard connector",
  ],
  treatment: ["preservative tin", "tape roll", "tin of edge sealer", "tin brush"],
  "nets and ropes": ["net", "net post", "net rope", "guy rope", "net tie", "net peg"],
  "tools and safety": [
    "peg",
    "roll of string",
    "can of marking paint",
    "pair of gloves",
    "pair of goggles",
    "set of ear defenders",
    "dust mask",
    "driver bit",
    "drill bit",
    "saw blade",
  ],
}

const BY_NAME: ReadonlyMap<string, ShopGroup> = new Map(
  SHOP_GROUPS.flatMap((group) => THINGS[group].map((thing) => [keyOf(thing), group] as const)),
)

/** The group of a thing that is not cut from the lengths sold; nothing where nobody said where it is found. */
export function shopGroupOf(item: string): ShopGroup | undefined {
  return BY_NAME.get(keyOf(item))
}
