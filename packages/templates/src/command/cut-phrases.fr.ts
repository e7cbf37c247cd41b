import type { CutPhrases } from "./cut-phrases.en.ts"

export const FRENCH_CUT: CutPhrases = {
  titles: {
    cut: "planches à acheter, et comment les couper",
    splice: "où les morceaux se joignent, et comment les couper",
    sheet: "où les panneaux se joignent, et comment les couper",
    buy: "quoi acheter, et chez qui",
  },
  best: (amount) => `${amount}, le meilleur, c'est prouvé : rien ne revient à moins.`,
  notBest: (amount, bound, gap) =>
    `${amount} ; aucun plan ne revient à moins de ${bound} (écart ${gap.replace(".", ",")} %).`,
  method: (method) => `Méthode : ${method}.`,
  impossible: "Il n'y a pas de plan.",
  notFound: "Aucun plan n'a été trouvé, et il n'est pas prouvé qu'il n'y en a aucun.",
  unknown: "inconnu",
  sheets: (count) => (count < 2 ? `${count} panneau` : `${count} panneaux`),
  boards: (count) => (count < 2 ? `${count} planche` : `${count} planches`),
  inAll: (money) => `${money.replace(".", ",")} en tout`,
  buy: "Acheter :",
  inThisOrder: "Couper, dans cet ordre :",
  piecesMeet: "Les morceaux se joignent à :",
  endJoints: "Joints de bout à :",
  skid: (number) => `patin ${number}`,
  course: (number) => `rangée ${number}`,
  nowhere: "nulle part : un seul morceau",
  packs: (count, size) => `${count} × ${size === 1 ? "un" : `paquet de ${size}`}`,
  from: (supplier) => `chez ${supplier}`,
  strip: (height, length) => `bande de ${height} de haut, ${length} de long`,
  block: (width, ripped) =>
    `bloc de ${width}, refendu en ${ripped.map(([height, count]) => `${count} de ${height}`).join(" et ")}`,
  sheet: (width) => `panneau de ${width} de haut`,
}
