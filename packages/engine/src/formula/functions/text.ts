import { joinCells } from "../cell.ts"
import { joinDoubles } from "../double.ts"
import { typeOfJoin } from "../operators.ts"
import { type FunctionRule, MANY } from "./function-rule.ts"

/** Functions of texts. */
export const TEXTS: readonly FunctionRule[] = [
  {
    name: "CONCATENATE",
    least: 1,
    most: MANY,
    typeOf: typeOfJoin,
    evaluate: joinCells,
    inDoubles: joinDoubles,
    says: "Joins texts and plain numbers.",
    example: { formula: 'CONCATENATE(2; "x"; 6)', gives: "2x6" },
  },
]
