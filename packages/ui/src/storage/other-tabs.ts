/** Word between the tabs of this browser that have the workbook open: the last to save is the one that is kept. */
export function otherTabs(onSaved: () => void): { readonly saved: () => void } {
  const channel = new BroadcastChannel("pegbook workbook")
  channel.addEventListener("message", onSaved)
  return { saved: () => channel.postMessage("saved") }
}
