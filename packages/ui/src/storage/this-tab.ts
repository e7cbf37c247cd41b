const CURRENT = "pegbook-current"

/** What is remembered of one tab, as long as it is open. */
export interface ThisTab {
  /** The id of the workbook that was open in it last; nothing in a new tab, or where the browser keeps nothing. */
  current(): string | undefined
  opened(id: string): void
}

export function thisTab(): ThisTab {
  return {
    current() {
      try {
        return sessionStorage.getItem(CURRENT) ?? undefined
      } catch {
        return undefined
      }
    },
    opened(id) {
      try {
        sessionStorage.setItem(CURRENT, id)
      } catch {
        // The one that was open last in any tab is opened then.
      }
    },
  }
}
