import { nothingForgottenIn } from "./random-designs.ts"

nothingForgottenIn("shed-base")
