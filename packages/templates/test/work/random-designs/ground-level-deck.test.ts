import { nothingForgottenIn } from "./random-designs.ts"

nothingForgottenIn("ground-level-deck")
