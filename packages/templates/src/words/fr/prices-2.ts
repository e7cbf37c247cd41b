import type { Texts } from "../dictionary.ts"

export const prices2: Texts = {
  "May go back": "Peut être retourné",
  "Whole packs beyond the need, none of them opened. Ask first whether they take it back.":
    "Des paquets entiers au-delà du besoin, aucun ouvert. Demandez d'abord s'ils reprennent.",
  "By the plan": "Selon le plan",
  "What the plan has for what is bought so far.": "Ce que le plan prévoit pour ce qui est acheté jusqu'ici.",
  "Where it stands.": "Où cela en est.",
  "Spent and to spend": "Dépensé et à dépenser",
  "What you paid may have tax and delivery in it; the plan's lines are the goods alone.":
    "Ce que vous avez payé peut contenir taxe et livraison ; les lignes du plan sont la marchandise seule.",
  "Your notes against the plan.": "Vos notes comparées au plan.",
  "Added up over the list.": "Additionné sur la liste.",
  "Ask at your yard. Call timber by its size, and the rest: screws, frame screws, stone, fabric, edging, sheet, mesh roll, preservative tin, tape roll, tie, peg, roll of string, can of marking paint, pair of gloves, pair of goggles, set of ear defenders, dust mask, driver bit, drill bit, saw blade, tin brush, fabric pin, edging stake, box of 100 connector nails, tin of edge sealer, box of staples.":
    "Demandez à votre cour à bois. Nommez le bois par sa grosseur, et le reste : vis, vis de charpente, pierre, géotextile, bordure, panneau, rouleau de grillage, contenant de préservatif, rouleau de ruban, attache, piquet, rouleau de cordeau, bombe de peinture à marquer, paire de gants, paire de lunettes de protection, protecteurs d'oreilles, masque antipoussière, embout de vissage, mèche à bois, lame de scie, pinceau, agrafe à géotextile, piquet de bordure, boîte de 100 clous à connecteur, contenant de scellant à chants, boîte d'agrafes.",
  "Ask at your yard. Call timber by its size, and the rest: screws, frame screws, stone, fabric, preservative tin, tape roll, guard post, guard bolt, square washer, guard connector, peg, roll of string, can of marking paint, pair of gloves, pair of goggles, set of ear defenders, dust mask, driver bit, drill bit, saw blade, tin brush, fabric pin.":
    "Demandez à votre cour à bois. Nommez le bois par sa grosseur, et le reste : vis, vis de charpente, pierre, géotextile, contenant de préservatif, rouleau de ruban, poteau de garde-corps, boulon de garde-corps, rondelle carrée, ferrure de garde-corps, piquet, rouleau de cordeau, bombe de peinture à marquer, paire de gants, paire de lunettes de protection, protecteurs d'oreilles, masque antipoussière, embout de vissage, mèche à bois, lame de scie, pinceau, agrafe à géotextile.",
  "Ask at your yard. Call timber by its size, and the rest: screws, frame screws, block, stone, fabric, preservative tin, tape roll, tie, guard post, guard bolt, square washer, guard connector, peg, roll of string, can of marking paint, pair of gloves, pair of goggles, set of ear defenders, dust mask, driver bit, drill bit, saw blade, tin brush, fabric pin, box of 100 connector nails.":
    "Demandez à votre cour à bois. Nommez le bois par sa grosseur, et le reste : vis, vis de charpente, bloc, pierre, géotextile, contenant de préservatif, rouleau de ruban, attache, poteau de garde-corps, boulon de garde-corps, rondelle carrée, ferrure de garde-corps, piquet, rouleau de cordeau, bombe de peinture à marquer, paire de gants, paire de lunettes de protection, protecteurs d'oreilles, masque antipoussière, embout de vissage, mèche à bois, lame de scie, pinceau, agrafe à géotextile, boîte de 100 clous à connecteur.",
  "Ask at your yard. Call timber by its size, and the rest: screws, frame screws, tie, slab, stone, fabric, mesh roll, preservative tin, tape roll, peg, roll of string, can of marking paint, pair of gloves, pair of goggles, set of ear defenders, dust mask, driver bit, drill bit, saw blade, tin brush, fabric pin, box of 100 connector nails, box of staples.":
    "Demandez à votre cour à bois. Nommez le bois par sa grosseur, et le reste : vis, vis de charpente, attache, dalle, pierre, géotextile, rouleau de grillage, contenant de préservatif, rouleau de ruban, piquet, rouleau de cordeau, bombe de peinture à marquer, paire de gants, paire de lunettes de protection, protecteurs d'oreilles, masque antipoussière, embout de vissage, mèche à bois, lame de scie, pinceau, agrafe à géotextile, boîte de 100 clous à connecteur, boîte d'agrafes.",
}
