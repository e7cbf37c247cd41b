import type { Texts } from "../dictionary.ts"

export const ramps: Texts = {
  Ramps: "Rampes",
  "How far a ramp reaches at either end, and what it is made of. On falling ground the two are not alike.":
    "Jusqu'où avance une rampe à chaque bout, et de quoi elle est faite. Sur un sol en pente, les deux diffèrent.",
  "How people get on at the high end": "Comment on monte au bout haut",
  "The high end stands lowest above its ground, so a ramp is shortest here.":
    "Le bout haut est le moins élevé au-dessus de son sol ; une rampe y est donc la plus courte.",
  ramp: "rampe",
  steps: "marches",
  nothing: "rien",
  "How people get on at the low end": "Comment on monte au bout bas",
  "A barrow or a wheelchair that gets on at one end may have to get off at the other.":
    "Une brouette ou un fauteuil roulant qui monte à un bout doit parfois descendre à l'autre.",
  "Steepest ramp for a wheelchair": "Rampe la plus raide pour un fauteuil roulant",
  "What the rules for public places allow; many people find even this hard without a push.":
    "Ce que permettent les règles des lieux publics ; bien des gens la trouvent déjà dure sans qu'on les pousse.",
  "Is the ramp gentle enough?": "La rampe est-elle assez douce ?",
  "A steep wet ramp of boards is slippery on foot as well.":
    "Une rampe de planches raide et mouillée glisse aussi à pied.",
  "Wet boards are slippery. Nail on strips of grit or mesh where a ramp gets little sun.":
    "Les planches mouillées glissent. Clouez des bandes antidérapantes ou du grillage là où une rampe a peu de soleil.",
  "Make the ramps no steeper than {ramp_slope_most}: the table of the two ends says how far they then reach out.":
    "Ne faites pas les rampes plus raides que {ramp_slope_most} : le tableau des deux bouts dit jusqu'où elles avancent alors.",
  "The two ends": "Les deux bouts",
  "What a ramp at each end comes to; nothing is counted where none is wanted.":
    "Ce que donne une rampe à chaque bout ; rien n'est compté là où l'on n'en veut pas.",
  End: "Bout",
  "The higher ground first.": "Le sol le plus haut d'abord.",
  "Ramp here?": "Une rampe ici ?",
  "From the ground at the middle of the end to the surface.": "Du sol au milieu du bout jusqu'à la surface.",
  "Reaches out": "Avance de",
  "Along the ground, from the walk's end to the foot, as if the ground there were level. Measure it on site: falling ground makes it longer.":
    "Au sol, du bout du sentier au pied, comme si le sol y était de niveau. Mesurez sur place : un sol en pente l'allonge.",
  "Head, along the length": "Tête, sur la longueur",
  "Where it meets the walk: at 0 or at the whole length.":
    "Là où elle rejoint le sentier : à 0 ou à toute la longueur.",
  "Foot, along the length": "Pied, sur la longueur",
  "Where the ramp meets the ground, in the walk's own measure: below 0 before the first end.":
    "Là où la rampe touche le sol, dans la mesure du sentier : sous 0 avant le premier bout.",
  "Along the slope": "Le long de la pente",
  "What the stringers and the boards have to cover.": "Ce que longerons et planches doivent couvrir.",
  "Ramp stringers": "Longerons de rampe",
  "One to go on with every line of the walk.": "Un pour continuer chaque ligne du sentier.",
  "The walk's own boards and gap, along the slope.":
    "Les planches et le jeu du sentier, le long de la pente.",
  "Crossings of boards and stringers": "Croisements de planches et de longerons",
  "Every board crosses every stringer of the ramp.": "Chaque planche croise chaque longeron de la rampe.",
  "Would reach out at the gentlest needed": "Avancerait de, à la pente la plus douce requise",
  "At the steepest slope that a wheelchair is allowed, so that you can compare.":
    "À la pente la plus raide permise pour un fauteuil roulant, pour comparer.",
  "Rise, where a ramp is wanted": "Montée, là où l'on veut une rampe",
  "0 where none is.": "0 là où il n'y en a pas.",
  "Handrails?": "Mains courantes ?",
  "Yes where a wanted ramp rises more than the rise below. This workbook does not count or design them: a handrail carries people, so build it to your code.":
    "Oui là où une rampe voulue monte plus que la montée ci-dessous. Ce classeur ne les compte ni ne les conçoit : une main courante porte des gens, suivez votre code.",
  "Handrails and guards are leaned on. Their posts and fixings are your code's to say.":
    "On s'appuie sur les mains courantes et les garde-corps. Leurs poteaux et fixations sont à dire par votre code.",
  "Length of a ramp stringer": "Longueur d'un longeron de rampe",
  "Along the slope; 0 where no ramp is wanted.": "Le long de la pente ; 0 si l'on ne veut pas de rampe.",
  "Ground needed in front": "Sol requis devant",
  "The ramp and a level place at its foot to turn and to stop.":
    "La rampe et une place de niveau à son pied pour tourner et s'arrêter.",
  "Level place at the foot of a ramp": "Place de niveau au pied d'une rampe",
  "Room for a wheelchair to stop and turn.": "De quoi arrêter et tourner un fauteuil roulant.",
  "Most rise in one run": "Plus grande montée d'une seule volée",
  "A longer climb wants a level rest half way.":
    "Une montée plus longue veut un repos de niveau à mi-chemin.",
  "Can it be climbed in one run?": "Se monte-t-elle d'une seule volée ?",
  "Arms tire, and a chair that rolls back gathers speed.":
    "Les bras fatiguent, et un fauteuil qui recule prend de la vitesse.",
  "Break the ramp with a level rest, so that no run rises more than {ramp_rise_most}.":
    "Coupez la rampe par un repos de niveau, pour qu'aucune volée ne monte plus de {ramp_rise_most}.",
  "Least clear width for a wheelchair": "Moindre largeur libre pour un fauteuil roulant",
  "Between the kerbs, or between handrails.": "Entre les chasse-roues, ou entre les mains courantes.",
  "Wide enough for a wheelchair?": "Assez large pour un fauteuil roulant ?",
  "A walk that is too narrow at one place is too narrow altogether.":
    "Un sentier trop étroit à un endroit l'est partout.",
  "Make the walk wider, or the kerbs narrower, until {clear_width_least} is left between them.":
    "Élargissez le sentier, ou rétrécissez les chasse-roues, jusqu'à laisser {clear_width_least} entre eux.",
  "Rise from which a ramp has handrails": "Montée à partir de laquelle une rampe a des mains courantes",
  "In public places. At home, think who will use it.":
    "Dans les lieux publics. Chez vous, pensez à qui s'en servira.",
  "Each ramp stringer": "Chaque longeron de rampe",
  "What to cut for the ramps, of the walk's stringer timber.":
    "Quoi couper pour les rampes, dans le bois des longerons du sentier.",
  "The foot of a ramp lies on the ground: stand it on a strip of stone, and brush the cut end with preservative.":
    "Le pied d'une rampe est au sol : posez-le sur une bande de pierre, et badigeonnez le bout coupé de préservatif.",
  "1: the high end. 2: the low end.": "1 : le bout haut. 2 : le bout bas.",
  "Along the slope; the ends are then cut to the angle.":
    "Le long de la pente ; les bouts se coupent ensuite à l'angle.",
  "Longest ramp stringer that can be bought": "Plus long longeron de rampe qu'on peut acheter",
  "A ramp stringer comes out of one piece": "Un longeron de rampe sort d'un seul morceau",
  "A ramp hangs between its head and its foot; a joint would need a sleeper of its own.":
    "Une rampe pend entre sa tête et son pied ; un joint voudrait sa propre traverse.",
  "The longest piece to be had is {ramp_stock_longest}: add a longer length, lower the walk, or carry the walk on, level, before the ramp begins.":
    "Le plus long morceau disponible fait {ramp_stock_longest} : ajoutez une longueur plus longue, abaissez le sentier, ou prolongez-le de niveau avant la rampe.",
  "Each ramp board": "Chaque planche de rampe",
  "As long as the walk's own.": "Aussi longue que celles du sentier.",
}
