import { type Dimension, dimension } from "../quantity/dimension.ts"

export const LENGTH = dimension({ length: 1 })
export const AREA = dimension({ length: 2 })
export const VOLUME = dimension({ length: 3 })
export const MASS = dimension({ mass: 1 })
export const TIME = dimension({ time: 1 })
export const FORCE = dimension({ mass: 1, length: 1, time: -2 })
export const PRESSURE = dimension({ mass: 1, length: -1, time: -2 })
export const SPEED = dimension({ length: 1, time: -1 })
/** A moment and an energy have one dimension: force times length. */
export const MOMENT = dimension({ mass: 1, length: 2, time: -2 })
export const LINE_LOAD = dimension({ mass: 1, time: -2 })
export const DENSITY = dimension({ mass: 1, length: -3 })
export const TEMPERATURE_DIFFERENCE = dimension({ temperature: 1 })
export const TEMPERATURE: Dimension = { ...TEMPERATURE_DIFFERENCE, point: true }
export const EXPANSION = dimension({ temperature: -1 })
export const MONEY = dimension({ money: 1 })
export const MONEY_PER_AREA = dimension({ money: 1, length: -2 })
