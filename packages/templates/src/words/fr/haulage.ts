import type { Texts } from "../dictionary.ts"

export const haulage: Texts = {
  Haulage: "Transport",
  "How often you drive, and how far you carry.": "Combien de fois vous roulez, et jusqu'où vous portez.",
  "Your vehicle may carry": "Votre véhicule peut porter",
  "It is on the plate in the door frame; people and trailer count against it.":
    "C'est sur la plaque du cadre de porte ; passagers et remorque comptent dedans.",
  "An overloaded vehicle brakes late and steers badly. Tie the load down, and mark what sticks out behind.":
    "Un véhicule surchargé freine tard et se conduit mal. Attachez la charge, et signalez ce qui dépasse derrière.",
  Runs: "Voyages",
  "By weight alone. Long or bulky things may need one more.":
    "Au poids seul. Des choses longues ou encombrantes peuvent en demander un de plus.",
  "Longest single piece": "Plus longue pièce seule",
  "Does it go into or onto your vehicle, and round the corner of the house?":
    "Entre-t-elle dans ou sur votre véhicule, et tourne-t-elle le coin de la maison ?",
  "Fetched yourself or brought": "Cherché soi-même ou livré",
  "One line. Change its bed, way and cost of a run to your own.":
    "Une ligne. Mettez-y votre caisse, votre distance et le coût d'un voyage.",
  "Mark what sticks out behind a vehicle; your traffic law says how far it may, and how it is marked.":
    "Signalez ce qui dépasse d'un véhicule ; votre code de la route dit jusqu'où et comment.",
  "Length of the bed": "Longueur de la caisse",
  "Of the vehicle or trailer, with its tail closed.": "Du véhicule ou de la remorque, panneau arrière fermé.",
  "Way from the kerb": "Distance depuis la rue",
  "From where it is unloaded to where it is built.": "De là où l'on décharge à là où l'on construit.",
  "One run costs": "Coût d'un voyage",
  "Fuel, hire of a trailer, both ways.": "Essence, location d'une remorque, aller et retour.",
  "To spare on the last run": "De reste au dernier voyage",
  "A few pounds to spare is a near thing: wet timber differs from board to board.":
    "Quelques livres de reste, c'est juste : le bois mouillé varie d'une planche à l'autre.",
  "Longest piece sticks out": "La plus longue pièce dépasse de",
  "Behind the bed.": "Derrière la caisse.",
  "All runs cost": "Coût de tous les voyages",
  "To be held against the next.": "À comparer au suivant.",
  "Having it brought costs": "Coût de la livraison",
  "By the plan in force, without tax. Nothing while your suppliers' table has no charge.":
    "Selon le plan en vigueur, sans taxe. Rien tant que le tableau de vos fournisseurs n'a pas de frais.",
  "Barrow loads on the site": "Brouettées sur le chantier",
  "Stone to its place, and soil away from it.": "Pierre à sa place, et terre qu'on en sort.",
  "Way behind the barrow": "Distance derrière la brouette",
  "There and back with every load. Move the heap nearer if it frightens you.":
    "Aller et retour à chaque brouettée. Rapprochez le tas si cela vous effraie.",
  "Loads by step of the work": "Charges par étape des travaux",
  "Fetched step by step, it wants more runs and less room to keep it dry. Only what has a weight is in it.":
    "Cherché étape par étape, il faut plus de voyages et moins de place au sec. Seul ce qui a un poids y est.",
  "Step of the work": "Étape des travaux",
  "The one that uses it first.": "Celle qui s'en sert d'abord.",
  "Of all that is first used there.": "De tout ce qui y sert d'abord.",
  Loads: "Charges",
  "By weight alone, if only this is fetched.": "Au poids seul, si l'on ne cherche que cela.",
  "Nothing where nothing is counted by the piece.": "Rien si rien ne se compte à la pièce.",
  "Sticks out behind": "Dépasse derrière",
  "Beyond the bed of your vehicle.": "Au-delà de la caisse de votre véhicule.",
}
