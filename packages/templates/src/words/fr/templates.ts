import type { Texts } from "../dictionary.ts"

export const templates: Texts = {
  "Game table platform": "Plateforme pour table de jeu",
  "A low platform for an outdoor game table on a sloping lawn, with a surface of hard tiles, low edge boards and a net that stops the ball.":
    "Une plateforme basse pour une table de jeu extérieure sur une pelouse en pente : surface de tuiles rigides, planches de rive basses et un filet qui arrête la balle.",
  "Your local authority and its code decide what may be built, and whether a permit is needed. Ask before you buy or dig.":
    "Votre municipalité et son code décident de ce qui peut être construit et si un permis est requis. Demandez avant d'acheter ou de creuser.",
  "Have buried cables and pipes marked before you dig, however shallow the holes are.":
    "Faites repérer les câbles et conduites enfouis avant de creuser, même si les trous sont peu profonds.",
  "This workbook counts and checks by rules of the trade; it does not replace a licensed designer where the public uses the platform, where it stands high, or where the ground is soft, steep or made up.":
    "Ce classeur compte et vérifie selon les règles du métier ; il ne remplace pas un concepteur habilité là où le public utilise la plateforme, où elle est haute, ou quand le sol est mou, en forte pente ou remblayé.",
  "Wear eye, ear and breathing protection when you saw treated timber or concrete, and lift heavy pieces with a second person.":
    "Protégez vos yeux, vos oreilles et vos poumons quand vous sciez du bois traité ou du béton, et soulevez à deux les pièces lourdes.",
  "Shed base": "Base de cabanon",
  "A level timber floor for a garden shed on sloping ground, lying on skids on a pad of tamped stone.":
    "Un plancher de bois de niveau pour un cabanon de jardin sur un terrain en pente, posé sur des patins sur une assise de pierre compactée.",
  "Your local authority and its code decide what may be built, and whether a permit is needed, for the base and for the shed on it. Ask before you buy or dig.":
    "Votre municipalité et son code décident de ce qui peut être construit et si un permis est requis, pour la base comme pour le cabanon dessus. Demandez avant d'acheter ou de creuser.",
  "Have buried cables and pipes marked before you dig, however shallow the pad is.":
    "Faites repérer les câbles et conduites enfouis avant de creuser, même si l'assise est peu profonde.",
  "This workbook counts and checks by rules of the trade; it does not replace a licensed designer where the ground is soft, steep or made up, where snow is heavy, or where people live or work in the shed.":
    "Ce classeur compte et vérifie selon les règles du métier ; il ne remplace pas un concepteur habilité quand le sol est mou, en forte pente ou remblayé, quand la neige est lourde, ou quand des gens vivent ou travaillent dans le cabanon.",
  "A shed can be lifted and rolled by wind: the section on wind says how much has to be held, roughly. Ask how it has to be anchored at your place.":
    "Le vent peut soulever et faire rouler un cabanon : la section sur le vent dit à peu près ce qu'il faut retenir. Demandez comment l'ancrer chez vous.",
  "Wear eye, ear and breathing protection when you saw treated timber or cut slabs, and lift heavy pieces with a second person.":
    "Protégez vos yeux, vos oreilles et vos poumons quand vous sciez du bois traité ou coupez des dalles, et soulevez à deux les pièces lourdes.",
  Boardwalk: "Sentier de bois",
  "A level walk of boards over gently falling or soft ground: boards across stringers, on sleepers on strips of stone, with a ramp or steps at either end.":
    "Un sentier de planches de niveau sur un sol en pente douce ou mou : des planches sur des longerons, sur des traverses posées sur des bandes de pierre, avec une rampe ou des marches à chaque bout.",
  "Your local authority and its code decide what may be built, and whether a permit is needed. Wetland, shores and banks of streams have rules of their own. Ask before you buy or dig.":
    "Votre municipalité et son code décident de ce qui peut être construit et si un permis est requis. Les milieux humides et les rives ont leurs propres règles. Demandez avant d'acheter ou de creuser.",
  "Have buried cables and pipes marked before you dig, however shallow the trenches are.":
    "Faites repérer les câbles et conduites enfouis avant de creuser, même si les tranchées sont peu profondes.",
  "This workbook counts and checks by rules of the trade; it does not replace a licensed designer where the public uses the walk, where it stands high or crosses water, or where the ground is soft, steep or made up.":
    "Ce classeur compte et vérifie selon les règles du métier ; il ne remplace pas un concepteur habilité là où le public emprunte le sentier, où il est haut ou franchit l'eau, ou quand le sol est mou, en forte pente ou remblayé.",
  "Wear eye, ear and breathing protection when you saw treated timber, and lift heavy pieces with a second person.":
    "Protégez vos yeux, vos oreilles et vos poumons quand vous sciez du bois traité, et soulevez à deux les pièces lourdes.",
  "Wet boards are slippery: brush leaves and moss off, and keep them out of deep shade where you can.":
    "Les planches mouillées sont glissantes : balayez feuilles et mousse, et évitez l'ombre épaisse si vous pouvez.",
  "Ground-level deck": "Terrasse au sol",
  "A low deck that stands free in the garden: boards on joists, on beams that lie on pads. With cost, weight and the steps at both ends.":
    "Une terrasse basse qui se tient seule dans le jardin : des planches sur des solives, sur des poutres posées sur des dalles d'appui. Avec le coût, le poids et les marches aux deux bouts.",
  "This deck touches no building. One that leans on a house, or that is high enough to fall from, is designed and checked in another way.":
    "Cette terrasse ne touche aucun bâtiment. Celle qui s'appuie sur une maison, ou d'où l'on peut tomber, se conçoit et se vérifie autrement.",
  "This workbook counts and checks by rules of the trade; a licensed designer decides where the ground is soft, steep or made up, or where many people come together.":
    "Ce classeur compte et vérifie selon les règles du métier ; un concepteur habilité décide quand le sol est mou, en forte pente ou remblayé, ou quand beaucoup de gens s'y réunissent.",
  "Greenhouse floor": "Plancher de serre",
  "A level timber floor that carries a greenhouse: boards with gaps that drain, on joists on bearers on slabs, with mesh against animals.":
    "Un plancher de bois de niveau qui porte une serre : des planches espacées qui drainent, sur des solives, sur des lambourdes posées sur des dalles, avec un grillage contre les animaux.",
  "Your local authority and its code decide what may be built, and whether a permit is needed, for the floor and for the greenhouse on it. Ask before you buy or dig.":
    "Votre municipalité et son code décident de ce qui peut être construit et si un permis est requis, pour le plancher comme pour la serre dessus. Demandez avant d'acheter ou de creuser.",
  "A greenhouse can be lifted by wind, and this floor with it: the section on wind says how much has to be held, roughly. Ask its maker or a designer how both have to be anchored at your place.":
    "Le vent peut soulever une serre, et ce plancher avec elle : la section sur le vent dit à peu près ce qu'il faut retenir. Demandez à son fabricant ou à un concepteur comment ancrer les deux chez vous.",
  "This workbook counts and checks by rules of the trade; a licensed designer decides where the ground is soft, steep or made up, where snow is heavy, or where the public comes in.":
    "Ce classeur compte et vérifie selon les règles du métier ; un concepteur habilité décide quand le sol est mou, en forte pente ou remblayé, quand la neige est lourde, ou quand le public y entre.",
  "Electricity in a wet house kills: have sockets, heaters and lamps fitted by a qualified electrician.":
    "L'électricité dans une serre mouillée tue : faites poser prises, chauffages et lampes par un électricien qualifié.",
  "Joist span": "Portée des solives",
  "How far a joist may span and hang over: the calculation behind the published span tables, with every factor in sight.":
    "Jusqu'où une solive peut porter et dépasser : le calcul derrière les tableaux de portées publiés, avec tous les facteurs sous les yeux.",
  "Your local authority and its code decide which spans, loads and grades are accepted, and what has to be submitted. Their table outranks this calculation.":
    "Votre municipalité et son code décident des portées, charges et qualités acceptées, et de ce qu'il faut soumettre. Leur tableau l'emporte sur ce calcul.",
  "Where a crowd may gather, where a platform stands high, or where a member is notched, cracked or of unknown grade, have a licensed designer work it out.":
    "Là où une foule peut se réunir, où une plateforme est haute, ou quand une pièce est entaillée, fendue ou de qualité inconnue, faites faire le calcul par un concepteur habilité.",
  "Beam span": "Portée des poutres",
  "How far a beam under deck joists may span between posts: the calculation behind the published table, with every factor in sight.":
    "Jusqu'où une poutre sous des solives de terrasse peut porter entre poteaux : le calcul derrière le tableau publié, avec tous les facteurs sous les yeux.",
  "Sheets and boards on joists": "Panneaux et planches sur solives",
  "What a floor sheet carries between joists, worked out and as recommended, and the joist spacing that deck boards want.":
    "Ce qu'un panneau de plancher porte entre les solives, calculé et recommandé, et l'espacement des solives que demandent les planches de terrasse.",
}
