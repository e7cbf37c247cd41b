import { type LanguageId, languageInForce, type Book as Workbook } from "@pegbook/engine"
import { speak } from "@pegbook/templates"
import { renderToString } from "solid-js/web"
import { SheetContext } from "../../bridge/context.ts"
import { mirror } from "../../bridge/sheet.ts"
import { chooseWords, spoken } from "../../text/spoken.ts"
import { Book } from "./Book.tsx"
import { type Paper, usualPaper } from "./to-scale.ts"
import "../../styles/index.css"

/** The build book of the screen as a page's title and body, made without a browser. */
export async function bookPage(
  book: Workbook,
  title: string,
  chosen: Paper | undefined,
  language: LanguageId,
): Promise<{ readonly lang: string; readonly title: string; readonly body: string }> {
  await Promise.all([speak(language), chooseWords(language)])
  const paper = chosen ?? usualPaper(book.unitSystem, languageInForce().tag)
  return {
    lang: languageInForce().tag,
    title: spoken.buildBook.title(title),
    body: renderToString(() => (
      <SheetContext.Provider value={mirror(book)}>
        <main class="book" data-paper={paper}>
          <Book title={title} paper={paper} />
        </main>
      </SheetContext.Provider>
    )),
  }
}
