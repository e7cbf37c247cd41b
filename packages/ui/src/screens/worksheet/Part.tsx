import type { JSX } from "solid-js"

/** One titled part of an entry's details. */
export function Part(props: { readonly title: string; readonly children: JSX.Element }) {
  return (
    <section class="part">
      <h3>{props.title}</h3>
      {props.children}
    </section>
  )
}
