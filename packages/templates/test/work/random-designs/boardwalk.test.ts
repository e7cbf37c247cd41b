import { nothingForgottenIn } from "./random-designs.ts"

nothingForgottenIn("boardwalk")
