import type { Texts } from "../dictionary.ts"

export const beamStrengthChecks: Texts = {
  "Beam: strong and stiff enough?": "Poutre : assez solide et rigide ?",
  "Beam: bending": "Poutre : flexion",
  "Choose a deeper size, a shorter span, a closer spacing or a better grade: a moment of {beam_moment} meets {beam_moment_capacity}.":
    "Prenez plus haut, une portée plus courte, un espacement plus serré ou une meilleure qualité : un moment de {beam_moment} rencontre {beam_moment_capacity}.",
  "Beam: shear": "Poutre : cisaillement",
  "Choose a larger size or a shorter span: a shear of {beam_reaction} meets {beam_shear_capacity}.":
    "Prenez une plus grande grosseur ou une portée plus courte : un cisaillement de {beam_reaction} rencontre {beam_shear_capacity}.",
  "Beam: bearing on its seat": "Poutre : portance sur son siège",
  "Give it a seat of at least {beam_seat_needed}, or shorten the span.":
    "Donnez-lui un siège d'au moins {beam_seat_needed}, ou raccourcissez la portée.",
  "Beam: seat needed": "Poutre : siège requis",
  "Beam: sag": "Poutre : flèche",
  "It sags {beam_deflection} where {beam_deflection_allowed} is accepted: choose a deeper size or a shorter span.":
    "Elle fléchit de {beam_deflection} pour {beam_deflection_allowed} accepté : prenez plus haut ou une portée plus courte.",
}
