import { nothingForgottenIn } from "./random-designs.ts"

nothingForgottenIn("game-table-platform")
