import { createContext, useContext } from "solid-js"
import type { Proving } from "./proving.ts"
import type { Session } from "./session.ts"
import type { Sheet } from "./sheet.ts"
import type { Walk } from "./walk.ts"

export const SessionContext = createContext<Session>()
export const SheetContext = createContext<Sheet>()
export const WalkContext = createContext<Walk>()
export const ProvingContext = createContext<Proving>()

function required<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("used outside of the application")
  return value
}

export const useSession = (): Session => required(useContext(SessionContext))
/** The open workbook. */
export const useSheet = (): Sheet => required(useContext(SheetContext))
/** How the search for better plans of the open workbook goes. */
export const useProving = (): Proving => required(useContext(ProvingContext))
export const useWalk = (): Walk => required(useContext(WalkContext))
