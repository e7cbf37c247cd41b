import type { KeptWorkbook } from "./kept-workbook.ts"

/** Under which the first version kept its one workbook; what it could not read it copied to `workbook <moment>`. */
const WORKBOOK = "workbook"

/**
 * The workbooks among the records of the first version of the database, by the ids that they get. Their contents are
 * taken as they are, readable or not.
 */
export function workbooksOfFirstVersion(
  records: ReadonlyMap<string, unknown>,
): ReadonlyMap<string, KeptWorkbook> {
  const workbooks = new Map<string, KeptWorkbook>()
  for (const [key, document] of records) {
    if (key === WORKBOOK) workbooks.set(key, { document })
    else if (key.startsWith(`${WORKBOOK} `)) {
      workbooks.set(key, { changed: key.slice(WORKBOOK.length + 1), document })
    }
  }
  return workbooks
}
