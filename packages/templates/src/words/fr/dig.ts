import type { Texts } from "../dictionary.ts"

export const dig: Texts = {
  Digging: "Creusage",
  "How deep each hole is, and how much soil there is to put somewhere.":
    "La profondeur de chaque trou, et la terre qu'il faut mettre quelque part.",
  "Buried cables and pipes are marked": "Les câbles et conduites enfouis sont repérés",
  "Enter yes when the service has been and every line is marked on the ground, or has told you in writing that there is none. Until then nothing is dug, stakes included.":
    "Entrez oui quand le service est passé et que chaque ligne est marquée au sol, ou qu'il vous a écrit qu'il n'y en a pas. D'ici là, rien n'est creusé ni planté.",
  "Ask the service that marks buried lines before you dig, however shallow; it asks for some days' notice, and mostly costs nothing. Lines of your own, to a shed or a lamp, are not on its maps.":
    "Demandez au service de repérage avant de creuser, même peu profond ; il veut quelques jours de préavis, et c'est le plus souvent gratuit. Vos propres lignes, vers un cabanon ou une lampe, ne sont pas sur ses plans.",
  "Dig by hand within two feet of a mark. A cable that was hit is live until its owner says that it is not.":
    "Creusez à la main à moins de deux pieds d'une marque. Un câble touché est sous tension tant que son propriétaire n'a pas dit le contraire.",
  "Notice that the service asks for": "Préavis demandé par le service",
  "Working days before it comes. Two or three are usual; one city asks for five, another place for a week. Ask yours, and start nothing else in the ground meanwhile.":
    "Jours ouvrables avant sa venue. Deux ou trois est usuel ; une ville en demande cinq, un autre endroit une semaine. Demandez au vôtre, et ne commencez rien d'autre au sol en attendant.",
  "Steps up to the first spade": "Pas jusqu'au premier coup de bêche",
  "One when the lines are marked: dig. Two while they are not: have them marked, then dig.":
    "Un quand les lignes sont marquées : creusez. Deux tant qu'elles ne le sont pas : faites-les marquer, puis creusez.",
  "May you dig?": "Pouvez-vous creuser ?",
  "A cut cable or gas pipe can kill, and what it costs is yours.":
    "Un câble ou une conduite de gaz coupés peuvent tuer, et les frais sont à vous.",
  "Do not dig yet. Ask the service at least {locate_notice_days} working days ahead, tell it {greatest_dig} as the depth, and enter yes when its marks are on the ground.":
    "Ne creusez pas encore. Demandez au service au moins {locate_notice_days} jours ouvrables d'avance, donnez-lui {greatest_dig} comme profondeur, et entrez oui quand ses marques sont au sol.",
  "Dig at least": "Creuser au moins",
  "Turf and topsoil rot and shrink under a load; every hole goes down to firm soil.":
    "Gazon et terre végétale pourrissent et se tassent sous une charge ; chaque trou descend jusqu'au sol ferme.",
  "Deepest hole": "Trou le plus profond",
  "Tell this depth to the service that marks buried cables and pipes.":
    "Donnez cette profondeur au service qui repère câbles et conduites.",
  "Shallowest hole": "Trou le moins profond",
  "Even here the turf comes out.": "Même ici, le gazon est enlevé.",
  "Soil dug, in the ground": "Terre creusée, en place",
  "The holes together. Cuts are measured in place.":
    "Tous les trous ensemble. Les déblais se mesurent en place.",
  "Soil swells to": "La terre foisonne à",
  "Dug soil takes more room than it did in the ground: loam and common earth about a quarter more, clay nearly half.":
    "La terre creusée prend plus de place qu'en terre : limon et terre ordinaire environ un quart de plus, argile presque la moitié.",
  "Soil dug, loose": "Terre creusée, en vrac",
  "What you barrow away or spread: plan where the heap goes before the first spade.":
    "Ce que vous brouettez ou étendez : décidez où va le tas avant le premier coup de bêche.",
  "One barrow load": "Une brouettée",
  "A builder's barrow, not heaped: soil and stone are heavy.":
    "Une brouette de chantier, sans comble : terre et pierre sont lourdes.",
  "Barrow loads of soil": "Brouettées de terre",
  "How often somebody walks to the heap.": "Combien de fois quelqu'un marche jusqu'au tas.",
  "How deep each trench is, and how much soil there is to put somewhere.":
    "La profondeur de chaque tranchée, et la terre qu'il faut mettre quelque part.",
  "Deepest trench": "Tranchée la plus profonde",
  "Shallowest trench": "Tranchée la moins profonde",
  "The trenches together. Cuts are measured in place.":
    "Toutes les tranchées ensemble. Les déblais se mesurent en place.",
}
