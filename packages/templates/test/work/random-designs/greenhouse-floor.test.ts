import { nothingForgottenIn } from "./random-designs.ts"

nothingForgottenIn("greenhouse-floor")
