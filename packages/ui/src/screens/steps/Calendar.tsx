import type { StageView } from "@pegbook/engine"
import { createSignal } from "solid-js"
import { useSession } from "../../bridge/context.ts"
import { iCalendar } from "../../calendar/ical.ts"
import { isDate, orderEvents, stageEvents } from "../../calendar/stage-events.ts"
import { spoken } from "../../text/spoken.ts"

/** How long what is ordered is on its way, until somebody says otherwise. */
const USUAL_DELIVERY = "7"
const LONGEST_DELIVERY = 365

/** The steps, and the days to order by, as a file for a calendar, from a day on. */
export function Calendar(props: { readonly stages: readonly StageView[] }) {
  const session = useSession()
  const [start, setStart] = createSignal("")
  const [delivery, setDelivery] = createSignal(USUAL_DELIVERY)
  const days = () => (/^\d{1,3}$/.test(delivery().trim()) ? Number(delivery()) : Number.NaN)
  const isReady = () => isDate(start()) && days() <= LONGEST_DELIVERY
  function save(): void {
    const events = stageEvents(props.stages, session.current(), start())
    const orders = orderEvents(props.stages, events, days(), spoken.steps.orderFor)
    const file = iCalendar([...orders, ...events], new Date())
    const address = URL.createObjectURL(new Blob([file], { type: "text/calendar" }))
    const link = document.createElement("a")
    link.href = address
    link.download = spoken.steps.calendarFile
    link.click()
    URL.revokeObjectURL(address)
  }
  return (
    <section class="steps-calendar" aria-labelledby="steps-calendar">
      <h2 id="steps-calendar">{spoken.steps.calendar}</h2>
      <p class="quiet">{spoken.steps.calendarSays}</p>
      <div class="actions">
        <label>
          <span class="block-caption">{spoken.steps.start}</span>
          <input
            type="date"
            class="field"
            value={start()}
            onInput={(event) => setStart(event.currentTarget.value)}
          />
        </label>
        <label>
          <span class="block-caption">{spoken.steps.delivery}</span>
          <input
            type="number"
            class="field"
            min="0"
            max={LONGEST_DELIVERY}
            value={delivery()}
            onInput={(event) => setDelivery(event.currentTarget.value)}
          />
        </label>
        <button type="button" class="small" disabled={!isReady()} onClick={save}>
          {spoken.steps.saveCalendar}
        </button>
      </div>
    </section>
  )
}
