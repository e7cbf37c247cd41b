import { For, Show, Suspense } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { fetched } from "../../parts/fetched.tsx"
import { Guide } from "../../parts/Guide.tsx"
import { spoken } from "../../text/spoken.ts"
import { Row } from "./Row.tsx"
import { SectionList } from "./SectionList.tsx"
import { stepRow } from "./step-row.ts"
import { TitleBlock } from "./TitleBlock.tsx"

const OwnSection = fetched(() => import("./own/OwnSection.tsx"))

/** All entries in the order of the work, set out as a calculation sheet. */
export function Worksheet() {
  const sheet = useSheet()
  return (
    <div class="worksheet">
      <nav class="sections" aria-label={spoken.jump}>
        <p class="block-caption">{spoken.sections}</p>
        <SectionList />
      </nav>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the titles in it. */}
      <div class="sheet" onKeyDown={stepRow}>
        <TitleBlock />
        <CautionsFold />
        <Guide />
        <For each={sheet.definition.sections}>
          {(section) => (
            <section class="section" aria-labelledby={`section-${section.id}`}>
              <header class="section-head">
                <h2 id={`section-${section.id}`} tabindex={-1}>
                  {section.title}
                </h2>
                <p class="quiet">{section.says}</p>
              </header>
              <div class="captions" aria-hidden="true">
                <span>{spoken.columns.what}</span>
                <span>{spoken.columns.value}</span>
                <span>{spoken.columns.how}</span>
                <span>{spoken.columns.from}</span>
              </div>
              <ul class="row-list row-list-fixed" style={{ "--rows": section.entries.length }}>
                <For each={section.entries}>{(entry) => <Row name={entry.name} />}</For>
              </ul>
            </section>
          )}
        </For>
        <Suspense>
          <OwnSection />
        </Suspense>
        <Show when={sheet.definition.cautions.length > 0}>
          <section class="section" aria-labelledby="all-cautions">
            <header class="section-head">
              <h2 id="all-cautions">{spoken.cautionsTitle}</h2>
            </header>
            <ul class="cautions">
              <For each={sheet.definition.cautions}>{(caution) => <li>{caution}</li>}</For>
            </ul>
          </section>
        </Show>
      </div>
    </div>
  )
}

/** The first caution in sight, the others a press away. */
function CautionsFold() {
  const sheet = useSheet()
  return (
    <Show when={sheet.definition.cautions[0]}>
      {(first) => (
        <aside class="cautions-fold" aria-label={spoken.cautionsTitle}>
          <details>
            <summary>
              <strong>{spoken.cautionsTitle}.</strong> {first()}{" "}
              <span class="fold-more">{spoken.cautionsAll(sheet.definition.cautions.length)}</span>
            </summary>
            <ul class="cautions">
              <For each={sheet.definition.cautions}>{(caution) => <li>{caution}</li>}</For>
            </ul>
          </details>
        </aside>
      )}
    </Show>
  )
}
