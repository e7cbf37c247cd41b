// Alone in a file, so that what works the numbers out is fetched beside the first screen and not before it.
export { openBook } from "@pegbook/engine"
