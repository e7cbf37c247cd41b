import { type EntryKind, languageInForce, type MeasureId, type UnitSystem } from "@pegbook/engine"
import { typeset } from "@pegbook/templates"
import type { InterfaceWords } from "./spoken.ts"

function number(count: number): string {
  return count.toLocaleString("fr")
}

/** One of a thing or several of it; in French none is one. */
function many(count: number, one: string, several: string): string {
  return `${number(count)} ${Math.abs(count) < 2 ? one : several}`
}

/** An amount with its unit; what is counted one by one needs none. */
function counted(amount: string, unit: string): string {
  return unit === "chacun" ? amount : `${amount} ${unit}`
}

/** "a, b et c". */
function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? ""
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} et ${last}`
}

const KIND_SAYS: Readonly<Record<EntryKind, string>> = {
  input: "À vous de choisir.",
  figure: "Une donnée publiée ou du métier. Vous pouvez y mettre la vôtre.",
  formula: "Calculée à partir d'autres entrées.",
  column: "Calculée une fois pour chaque ligne de son tableau.",
  solved: "Trouvée par une recherche, et non par une seule formule.",
  check: "Une entrée comparée à une limite.",
}

const SKETCHES: InterfaceWords["sketches"] = {
  "game-table-platform":
    "Dessin, vu de côté : une table de jeu sur une plateforme de niveau. La pelouse descend de gauche à droite, et les piles de blocs sous la plateforme montent d'autant vers la droite. Un filet se dresse à un bout.",
  "shed-base":
    "Dessin, vu de côté : un petit cabanon au toit en pente sur un plancher de solives, porté par trois patins posés sur un seul lit de pierre.",
  boardwalk:
    "Dessin, vu d'en haut et de biais : un étroit sentier de planches posées en travers sur deux longues pièces de bois, qui s'éloigne sur un sol mou bordé de roseaux.",
  "ground-level-deck":
    "Dessin, vu de côté : une terrasse basse qui se tient seule dans un jardin, ses planches juste au-dessus du sol et une marche à chaque bout, avec une chaise et une plante en pot dessus et un arbre derrière.",
  "greenhouse-floor":
    "Dessin, vu de côté : une serre avec des plantes sur des tablettes, au-dessus d'un plancher de planches espacées, sur des solives portées par une pièce de bois posée sur des dalles. Un grillage descend dans le sol à chaque bout.",
  other:
    "Dessin, vu de côté : une plateforme de planches sur des pièces de bois, qui reposent sur des blocs posés au sol.",
}

const MEASURED: Readonly<Record<MeasureId, string>> = {
  length: "Une longueur",
  small_length: "Une petite longueur, comme une flèche",
  area: "Une aire",
  volume: "Un volume",
  bulk_volume: "Un volume de matière en vrac",
  mass: "Une masse",
  force: "Une force",
  pressure: "Une pression",
  stress: "Une contrainte dans un matériau",
  moment: "Un moment de flexion",
  line_load: "Une charge par longueur",
  density: "Une masse volumique",
  temperature: "Une température",
  temperature_difference: "Un écart de températures",
  expansion: "Ce que la chaleur fait gagner",
  angle: "Un angle",
  time: "Une durée",
  speed: "Une vitesse",
  energy: "Une énergie",
  count: "Un nombre de choses",
  share: "Une part, en %",
  ratio: "Un nombre sans unité",
  money: "De l'argent",
  money_per_area: "De l'argent par aire",
  text: "Un texte",
  yes_no: "Oui ou non",
}

const SYSTEMS: Readonly<Record<UnitSystem, string>> = { us: "Pieds et pouces", metric: "Métrique" }

const words: InterfaceWords = {
  many,
  product: "Pegbook",
  colon: " : ",

  screens: {
    label: "Écrans",
    start: "Accueil",
    worksheet: "Feuille",
    drawings: "Dessins",
    "cut-list": "Coupe",
    "buy-list": "Achats",
    "set-out": "Implantation",
    steps: "Étapes",
    "build-book": "Cahier",
    compare: "Comparer",
    explore: "Explorer",
    changes: "Changements",
  },
  skip: "Passer au contenu de la page",
  opening: "Ouverture du classeur…",
  unfetched:
    "Cette partie de Pegbook n'est pas encore dans ce navigateur, et n'a pas pu être chargée. Connectez-vous au réseau, puis enregistrez et rechargez ; votre travail est resté tel quel.",

  start: {
    title: "Que construisez-vous ?",
    says: "Choisissez ce qui s'en rapproche le plus. Chaque modèle est un classeur complet, avec des dimensions déjà en place ; changez celles qui sont à vous, et tous les autres nombres suivent.",
    choices: "Sortes de classeurs",
    units: "Longueurs en",
    unitsSay:
      "Pour les classeurs que vous commencez ici. Ce que vous tapez dans l'autre système est compris aussi, et chaque classeur peut changer de système en tout temps.",
    language: "Langue",
    begin: "Commencer celui-ci",
    beginSays: (title) => `Commencer celui-ci : ${title}`,
    own: "Commencer le vôtre",
    another: "En commencer un autre",
    words: (count) => `${count} mots du métier, expliqués`,
    toWorkbooks: (count) => (count < 2 ? "Aller à votre classeur" : `Aller à vos ${number(count)} classeurs`),
  },
  sketches: SKETCHES,
  picture: (label) => `Croquis, pas à l'échelle : ${label}`,

  workbooks: {
    title: "Vos classeurs",
    none: "Aucun pour l'instant. Un classeur apparaît ici dès que vous en commencez un, ou que vous changez quelque chose dans celui qui est ouvert.",
    where: "Ils sont conservés dans ce navigateur, sur cet appareil seulement.",
    open: "Ouvrir",
    openSays: (title) => `Ouvrir ${title}`,
    here: "Ouvert en ce moment",
    back: (title) => `Continuer avec ${title}`,
    goOn: "Continuer",
    rename: "Renommer",
    renameSays: (title) => `Renommer ${title}`,
    remove: "Supprimer",
    removeSays: (title) => `Supprimer ${title}`,
    newTitle: "Nouveau nom",
    kind: (title) => `Sorte : ${title}`,
    changed: (moment) => `Dernier changement : ${moment}`,
    changedUnknown: "Date du dernier changement inconnue",
    untitled: "Classeur sans nom",
    unreadable: (reason) => `Il ne peut pas être ouvert, et reste conservé tel quel. ${reason}`,
    removed: (title) => `Classeur « ${title} » supprimé.`,
    photosStay: (title) =>
      `Le classeur « ${title} » est encore ici : le navigateur n'a pas voulu supprimer ses photos. Fermez les autres onglets de cette page et réessayez ; ou supprimez le classeur seul, et ses photos restent dans ce navigateur jusqu'à ce que vous vidiez ce qu'il conserve pour cette page.`,
    tryAgain: "Réessayer",
    removeAlone: "Le supprimer sans ses photos",
    backAgain: (title) => `Le classeur « ${title} » est de retour.`,
    refused: (reason) => `Cela n'a pas marché. ${reason}`,
  },

  columns: { what: "Ce que c'est", value: "Valeur", how: "Comment c'est calculé", from: "D'où ça vient" },
  kindSays: KIND_SAYS,
  systems: SYSTEMS,

  block: {
    label: "Ce classeur",
    workbook: "Classeur",
    scenario: "Scénario",
    shownIn: "Affiché en",
    checks: "Vérifications",
    kept: "Conservation",
    look: "Apparence",
    more: (scenario) => `Scénario : ${scenario} ; unités, enregistrement`,
  },
  look: { device: "Comme l'appareil", light: "Claire", dark: "Sombre" },

  checkCount: (verdict, count) => many(count, ...languageInForce().entries.verdictCounts[verdict]),
  goToFirst: (verdict) => `Aller à la première qui dit : ${languageInForce().entries.verdicts[verdict]}`,
  noChecks: "Ce classeur n'a pas de vérification.",
  blankInputs: (count) => many(count, "entrée est encore vide", "entrées sont encore vides"),

  sections: "Sections",
  jump: "Aller à une section",
  entries: (count) => many(count, "entrée", "entrées"),
  close: "Fermer",

  search: {
    label: "Trouver une entrée",
    placeholder: "Trouver une entrée par son nom",
    placeholderShort: "Chercher",
    hint: "Appuyez sur / pour venir ici. Les flèches choisissent, Entrée y va.",
    none: (typed) => `Rien ne s'appelle « ${typed} ». Essayez un seul mot.`,
    found: (count) => many(count, "entrée trouvée", "entrées trouvées"),
  },

  walk: {
    label: "D'où vous venez",
    back: (label) => `Retour à ${label}`,
    forget: "Oublier le parcours",
  },

  moved: {
    count: (numbers) => many(numbers, "nombre a bougé", "nombres ont bougé"),
    none: "Aucun nombre n'a bougé.",
    list: "Les voir",
    hideList: "Cacher la liste",
    next: "Suivant",
    nextSays: "Le suivant qui a bougé",
    previous: "Précédent",
    previousSays: "Le précédent qui a bougé",
    at: (place, of) => `${place} sur ${of}`,
    was: "avant :",
    ratioWas: "rapport avant :",
    nowSays: "maintenant",
    cells: (count) => many(count, "cellule a bougé", "cellules ont bougé"),
    row: (row) => `ligne ${row}`,
    title: "Ce que le dernier changement a fait bouger",
    old: "Avant",
    now: "Après",
  },

  row: {
    open: (label) => `${label} : détails`,
    blank: "vide",
    noValue: "aucune valeur",
    problem: "calcul impossible",
    overridden: "Remplacée.",
    overriddenCells: (count) => many(count, "valeur remplacée.", "valeurs remplacées."),
    putBackAll: "Remettre les valeurs d'origine",
    changed: "Changée.",
    putBack: (text) => `Remettre ${text}`,
    putBackBlank: "La vider de nouveau",
    against: (demand, limit, sense) => `${demand}, ${sense === "at_most" ? "au plus" : "au moins"} ${limit}`,
    moreSources: (count) => `et ${count} de plus`,
    asGiven: "Tel que publié",
    yours: "À vous de choisir",
    accepts: (text) => `À vous : ${text}`,
    blankMeans: (meaning) => `vide : ${meaning}`,
    orBlank: (says, meaning) => `${says}. Laissée vide : ${meaning}`,
    searched: "Trouvée par recherche",
    noSource: "aucune source donnée",
    from: (kind, title) => `${kind} : ${title}`,
  },

  detail: {
    why: "Pourquoi",
    formula: "Formule",
    howManyRows: "Combien de lignes",
    withValues: "Avec les valeurs",
    accepted: "Accepté",
    typedAs: "Tapé",
    readAs: "Lu",
    original: "Valeur du modèle",
    published: "Valeur publiée",
    leansOn: "S'appuie sur",
    leansOnNothing: "Rien : c'est une donnée, pas un calcul.",
    leanedOnBy: "Ce qui s'appuie dessus",
    leanedOnByNothing: "Rien ne s'appuie dessus.",
    showAll: (count) => `Tout afficher (${number(count)})`,
    sources: "D'où ça vient",
    cautions: "Attention",
    problems: "Ce qui ne va pas",
    name: "Nom",
    kind: "Sorte",
    ownValue: (label) => `Votre propre valeur pour : ${label}`,
    ownValueSays: "Mettre la vôtre à sa place",
    verdict: "Verdict",
    ratio: "Rapport",
    demand: "Demande",
    limit: "Limite",
    atMost: "ne doit pas dépasser la limite",
    atLeast: "ne doit pas être sous la limite",
    advice: "Ce qui pourrait changer",
    method: "Méthode",
    objective: "Optimisé",
    bound: "Limite prouvée",
    provenBest: "Aucune solution ne peut être meilleure.",
    unmet: "N'a pas pu être respecté",
    edition: (edition) => `édition ${edition}`,
  },

  verdict: {
    says: (verdict, label, demand, limit, sense) => {
      const against = `${demand}, ${sense === "at_most" ? "pour un maximum" : "pour un minimum"} de ${limit}`
      if (verdict === "fails") return `${label} : non. On arrive à ${against}.`
      if (verdict === "near") return `${label} : oui, mais de justesse. On arrive à ${against}.`
      return `${label} : oui. On arrive à ${against}.`
    },
    outside:
      "Le tableau publié derrière cette vérification ne va pas jusqu'à ces nombres : il ne dit donc ni que ça tient, ni que ça ne tient pas. Revenez dans le tableau, ou faites faire le calcul par une personne habilitée.",
    howNear: (ratio) => `À un rapport de 1, la limite est atteinte ; ici il est de ${ratio}.`,
    defer:
      "Votre code local et les personnes habilitées à en juger ont le dernier mot ; ce classeur ne les remplace pas.",
    what: "Qu'est-ce qui la rendrait conforme ?",
    whatAgain: "Chercher de nouveau",
    looking: "Recherche en cours. Vous pouvez continuer à taper.",
    stop: "Arrêter",
    none: "Aucun changement essayé seul ne suffit. Essayez-en deux ensemble, ou suivez le conseil ci-dessus.",
    remedies: "Un changement qui suffit",
    remedy: (label, from, to) => `${label} ${from} → ${to} : conforme`,
    newlyFails: "Deviendrait non conforme :",
    nothingFails: "Rien d'autre ne deviendrait non conforme.",
    tryIt: "Essayer dans une copie",
    trySays: (label, to) => `Essayer dans une copie : ${label} ${to}`,
    copyTitle: (label, to) => `${label} ${to}`,
    tried: (title) =>
      `Vous travaillez maintenant dans la copie « ${title} ». L'autre est restée telle quelle.`,
    stale: "Quelque chose a changé depuis ; cela ne vaut peut-être plus.",
    nearest: "Le plus près de sa limite :",
  },

  over: {
    type: "La remplacer",
    label: (label) => `Votre propre valeur pour : ${label}`,
    cellLabel: (label, row) => `Votre propre valeur pour : ${label}, ligne ${row}`,
    says: "Ce que vous tapez prend sa place partout, et porte une marque. L'ancienne valeur reste à portée d'un clic.",
    original: "Origine",
    originalNow: "Ce que donnerait la formule",
    putBack: (text) => `Remettre ${text}`,
    mark: "à vous",
    inTable: (original) => `(à vous ; l'origine est ${original})`,
    title: "Ce que vous avez remplacé",
    none: "Rien n'est remplacé dans ce scénario. Les entrées sont à vous de toute façon ; elles ne sont pas listées.",
    row: (label, row) => `${label}, ligne ${row}`,
    yours: "La vôtre",
    how: (original) => `Remplacée ; sinon ${original}`,
  },

  changes: {
    title: "Ce qui a changé",
    undo: "Annuler le dernier changement",
    redo: "Refaire ce qui a été annulé",
    tookBack: (what) => `Annulé : ${what}`,
    didAgain: (what) => `Refait : ${what}`,
    history: "Pas à pas",
    says: "Le plus récent d'abord. Conservé avec le classeur, jusqu'à 500 pas.",
    none: "Rien n'a encore changé.",
    undone: "annulé",
    copyAt: "Copier l'état d'alors",
    copyAtSays: (step) => `Copier l'état d'alors, après le pas ${step}`,
    copyTitle: (title, moment) => `${title}, ${moment}`,
    copied: (title) => `Vous travaillez maintenant dans « ${title} », dans l'état d'alors.`,
    more: (count) => `En afficher ${number(count)} de plus`,
    typed: (label, from, to) => `${label} : ${from} → ${to}`,
    put: (label, from) => `${label} : valeur du modèle remise, au lieu de ${from}`,
    rows: (label, count) => `${label} : ${many(count, "ligne tapée", "lignes tapées")}`,
    rowsBack: (label) => `${label} : lignes du modèle remises`,
    renamed: (from, to) => `Scénario « ${from} » renommé « ${to} »`,
    copyMade: (title) => `Copié sous « ${title} »`,
    sealed: (title) => `Scellé sous « ${title} »`,
    removed: (title) => `Scénario « ${title} » supprimé`,
    moved: (title) => `Passé à « ${title} »`,
    movedAway: "Passé à un autre scénario",
    units: (system) => `Affiché en ${SYSTEMS[system].toLowerCase()}`,
    ownAdded: (label) => `Votre entrée « ${label} » ajoutée`,
    ownRemoved: (label) => `Votre entrée « ${label} » retirée`,
    ownChanged: (label) => `Votre entrée « ${label} » changée`,
    ownLabelled: (from, to) => `Votre entrée « ${from} » s’appelle maintenant « ${to} »`,
    ownRenamed: (label, from, to) => `« ${label} » renommée dans les formules : ${from} → ${to}`,
    cell: (label, row, column) => `${label}, ligne ${row}, ${column}`,
    rowAdded: (label, texts) => `${label} : une ligne ajoutée (${texts})`,
    rowRemoved: (label, texts) => `${label} : une ligne retirée (${texts})`,
    ticked: (stage, done) => (done ? `Cochée : ${stage}` : `Plus cochée : ${stage}`),
    noted: (stage, from, to) => `Vos notes sur ${stage} : ${from} → ${to}`,
    here: (stage, thing, isHere) =>
      isHere ? `${stage} : ${thing}, sur place` : `${stage} : ${thing}, pas sur place`,
    andMore: (count) => `et ${many(count, "autre changement", "autres changements")}`,
    inScenario: (title) => `dans « ${title} »`,
    template: "celle du modèle",
    nothing: "aucun changement",
  },

  seal: {
    button: "C'est d'après ceci que j'ai acheté",
    title: "Nom de ce qui a servi à l'achat",
    suggestion: (date) => `Acheté d'après ceci, ${date}`,
    says: "Garde les nombres tels qu'ils sont dans une copie scellée que personne ne peut changer. Comparer montre ce qui a changé depuis, ligne par ligne dans la liste d'achats.",
    sealed: (title) =>
      `« ${title} » est scellé. Vous continuez dans le scénario où vous étiez ; Comparer montre les différences.`,
    tag: (title) => `${title} (scellé)`,
    here: "Ce scénario est scellé : il montre ce qui a servi à l'achat, et refuse les changements. Enregistrez-en une copie pour continuer.",
    refused: "Ce scénario est scellé. Enregistrez-en une copie pour continuer.",
  },

  own: {
    title: "À vous",
    says: "Les entrées que vous avez ajoutées. Elles peuvent utiliser tous les noms du classeur, et se servir les unes des autres.",
    add: "Ajouter une entrée à vous",
    kinds: {
      input: "Une entrée",
      figure: "Une donnée",
      formula: "Une formule",
      check: "Une vérification",
      column: "Une colonne d'un tableau",
    },
    kindSays: {
      input: "Un nombre, un texte ou un oui/non que vous choisissez.",
      figure: "Un nombre trouvé quelque part. Dites où.",
      formula: "Calculée à partir d'autres entrées.",
      check: "Une chose comparée à une limite.",
      column: "Calculée une fois pour chaque ligne d'un tableau.",
    },
    kind: "Quoi ajouter",
    label: "Ce que c'est",
    labelHint: "En mots, comme ce sera affiché : Hauteur de la barrière",
    name: "Nom dans les formules",
    nameHint: "Minuscules sans accent, chiffres et _ seulement. Tiré des mots, à moins que vous le tapiez.",
    why: "Pourquoi (facultatif)",
    table: "Tableau",
    measure: "Ce qu'elle mesure",
    measures: MEASURED,
    trying: "Essai de la formule…",
    used: (name) => `Mis dans la formule : ${name}`,
    value: "Valeur",
    blankValue: "Valeur (peut rester vide)",
    source: "D'où vient la donnée",
    sourceHint: "Une page, une étiquette, le conseil d'une personne, votre propre mesure",
    formula: "Formule",
    formulaHint:
      "Des noms, des nombres, + − * / et des fonctions. Commencez un nom et choisissez dans la liste, ou appuyez sur « Utiliser » à côté d'une ligne.",
    demand: "Ce qui est comparé à la limite",
    limit: "Limite",
    sense: "Conforme quand c'est",
    senses: { at_most: "au plus la limite", at_least: "au moins la limite" },
    save: "L'ajouter",
    saveChange: "La changer",
    cancel: "Annuler",
    gives: (measure, text) => `${measure}${text === "" ? "" : ` : ${text}`}`,
    allRight: "Le calcul est possible.",
    unfit: (count) => `Conservées, mais sans effet : ${number(count)}`,
    unfitSays:
      "Elles sont venues avec le fichier, ou d'une version antérieure de ce classeur, et n'y trouvent pas leur place.",
    added: (label) => `« ${label} » ajoutée.`,
    changed: (label) => `« ${label} » changée.`,
    removed: (label) => `« ${label} » retirée.`,
    change: "Changer",
    changeSays: (label) => `Changer ${label}`,
    rename: "Renommer",
    renameSays: (label) => `Renommer ${label} dans les formules`,
    remove: "Retirer",
    removeSays: (label) => `Retirer ${label}`,
    newName: "Nouveau nom dans les formules",
    evenSo: "La retirer quand même",
    keep: "La garder",
    leaning: (count) => many(count, "entrée s'appuie dessus :", "entrées s'appuient dessus :"),
    tag: "à vous",
    page: (from, to, of) => `${number(from)} à ${number(to)} sur ${number(of)}`,
    nextPage: "Les suivantes",
    previousPage: "Les précédentes",
    columns: "Colonnes ajoutées à des tableaux",
    use: "Utiliser",
    useSays: (label) => `Utiliser ${label} dans la formule`,
    pointing: "Appuyer sur « Utiliser » à côté d'une ligne met son nom dans la formule.",
    names: "Noms qui conviennent",
    noName: "Tapez d'abord ce que c'est : le nom en est tiré.",
  },

  explore: {
    title: "Explorer",
    says: "Essaie de nombreuses valeurs dans des copies que personne ne voit, et montre ce qu'elles donneraient. Rien ne change dans le classeur.",
    broke: "Le calcul n'a pas pu se faire.",
    brokeNext: "Rechargez la page et réessayez.",
    working: (at, of) => `${number(at)} sur ${number(of)} essayées`,
    workingFirst: "Préparation…",
    cancel: "Arrêter",
    stopped: "Arrêté ; voici ce qui a été essayé jusque-là.",
    span: "Essayer une plage de valeurs",
    spanSays: "Une entrée, ou deux ensemble, d'une valeur à une autre.",
    ready: "Graphiques tout prêts : pressez, et c'est tracé",
    readyRange: (from, to) => `de ${from} à ${to}`,
    unpriced:
      "Rien n'est compté ici pour l'instant : un coût est la somme de ce qui a un prix dans votre liste.",
    unpricedWhere: (label) => `D'où vient « ${label} »`,
    input: "Entrée",
    second: "Et avec chacune, une autre entrée (facultatif)",
    noSecond: "Aucune",
    from: "De",
    to: "À",
    step: "Par pas de",
    choices: "Valeurs à essayer",
    result: "Afficher",
    results: "Résultats à afficher",
    leaveOut: "Laisser de côté",
    run: "Essayer",
    table: "Ce que chacune a donné",
    passes: "Tout est conforme",
    fails: (count) => many(count, "vérification non conforme", "vérifications non conformes"),
    refusedRow: "non acceptée",
    chart: (result, input) => `${result}, selon ${input}`,
    chartSays: (result, input, count) =>
      `Graphique de ${result} selon ${input} : ${many(count, "valeur", "valeurs")}, les mêmes que dans le tableau ci-dessous.`,
    legendPasses: "tout est conforme",
    legendFails: "au moins une vérification non conforme",
    take: "Essayer dans une copie",
    takeSays: (texts) => `Essayer dans une copie : ${texts}`,
    edge: "Jusqu'où peut-on aller ?",
    edgeSays: "La plus grande ou la plus petite valeur d'une entrée avec laquelle tout reste conforme.",
    toward: "Chercher",
    towards: { largest: "la plus grande", smallest: "la plus petite" },
    least: "Pas sous (facultatif)",
    most: "Pas au-dessus de (facultatif)",
    seek: "Chercher",
    found: (label, text, tried) =>
      `${label} : ${text}. Essayé : tout est conforme. ${many(tried, "valeur essayée", "valeurs essayées")}.`,
    notFound: (tried) =>
      `Aucune valeur essayée ne rend tout conforme (${many(tried, "valeur essayée", "valeurs essayées")}).`,
    binds: "Un pas plus loin, ceci n'est plus conforme :",
    always: "Ceci est non conforme à toutes les valeurs essayées :",
    noBinds: "Rien ne l'arrête avant la fin de la recherche.",
    needStep: "Dites de combien est un pas.",
    near: "Dimensions proches des vôtres qui laissent le moins de restes",
    nearSays:
      "Planches et panneaux se vendent en longueurs fixes : une dimension un peu plus courte ou plus longue peut les employer jusqu’au bout. Chacune est calculée en entier.",
    nearInput: "Dimension",
    reach: "De part et d’autre",
    score: "Le moins possible de",
    seekNear: "Chercher près des miennes",
    nearTried: (tried, shown) =>
      `${many(tried, "dimension essayée", "dimensions essayées")} ; voici les ${shown} meilleures, d’abord celles qui passent toutes les vérifications.`,
    present: "comme maintenant",
  },

  table: {
    scroll: (label) => `${label}, tableau. Défile de côté.`,
    rowHead: "Ligne",
    hint: "Appuyez sur le titre d'une colonne pour sa formule, ou sur une valeur pour le calcul de sa ligne.",
    openColumn: (label) => `${label} : formule de cette colonne`,
    cell: (row, column, text) => `${text} (ligne ${row}, ${column})`,
    rowOf: (row, of) => `Ligne ${row} sur ${of}`,
    previousRow: "Ligne précédente",
    nextRow: "Ligne suivante",
    showAllRows: (count) => `Afficher les ${number(count)} lignes`,
    empty: "Aucune ligne.",
    backToTable: "Fermer cette colonne",
    add: "Ajouter une ligne",
    putBack: "Remettre les lignes du modèle",
    remove: (row) => `Retirer la ligne ${row}`,
    removeShort: "Retirer",
    cellLabel: (column, row) => `${column}, ligne ${row}`,
    unfinished: (row, columns) => `Pas encore en vigueur : il manque à la ligne ${row} ${listed(columns)}.`,
    rowsInForce: "Les lignes d'avant restent en vigueur.",
    noneYet: "Aucune ligne pour l'instant.",
  },

  exchange: {
    bringIn: "Importer un CSV…",
    saveCsv: "Enregistrer en CSV",
    saveOpenDocument: "Enregistrer en OpenDocument",
    loading: "Un instant…",
    headings: (names) =>
      `Sur la première ligne : ${names.join(", ")}. Séparés par des virgules, des points-virgules ou des tabulations.`,
    headingUnit: (name, unit) =>
      `Un en-tête peut donner l'unité des nombres qui suivent, par exemple « ${name} (${unit}) ».`,
    file: "Un fichier",
    paste: "Ou collez-le ici",
    reading: "Lecture en cours. Rien n'est ajouté sans votre accord.",
    found: (good, bad) =>
      `${many(good, "ligne peut être ajoutée", "lignes peuvent être ajoutées")}${bad === 0 ? "." : ` ; ${many(bad, "ligne ne le peut pas", "lignes ne le peuvent pas")}.`}`,
    bad: "Laissées de côté, jusqu'à ce qu'elles soient corrigées",
    good: "Ce qui serait ajouté",
    line: "Ligne",
    duplicate: (line, first) =>
      `La ligne ${line} dit la même chose que la ligne ${first} ; elle est laissée de côté.`,
    formula: (line, column) =>
      `Ligne ${line}, ${column} : ceci ressemble à une formule. Elle n'est pas exécutée ; elle reste un texte.`,
    unknown: (names) => `Pas une colonne de ce tableau, donc laissé de côté : ${names.join(", ")}.`,
    more: (count) => `et ${number(count)} de plus`,
    mark: "Les décimales s'écrivent avec",
    marks: { point: "un point : 12.50", comma: "une virgule : 12,50" },
    thereAre: (count) => (count < 2 ? "Il y a déjà 1 ligne" : `Il y a déjà ${number(count)} lignes`),
    instead: "Mettre celles-ci à leur place",
    behind: "Mettre celles-ci à la suite",
    putIn: (count) => `Ajouter ${many(count, "ligne", "lignes")}`,
    wasPutIn: (count, label) => `${many(count, "ligne ajoutée", "lignes ajoutées")} à « ${label} ».`,
  },

  field: {
    inForce: (text) => `Reste en vigueur : ${text}.`,
    inForceBlank: "Toujours vide.",
    revert: "Remettre",
    yes: "oui",
    no: "non",
    choose: "Choisir…",
  },

  scenario: {
    choose: "Scénario",
    saveCopy: "Enregistrer une copie",
    rename: "Renommer",
    remove: "Supprimer",
    compare: "Comparer",
    copyTitle: "Nom de la copie",
    newTitle: "Nouveau nom",
    save: "Enregistrer",
    cancel: "Annuler",
    suggestion: (title) => `${title}, modifié`,
    saved: (title) => `Copie enregistrée. Vous travaillez maintenant dans « ${title} ».`,
    removed: (title) => `« ${title} » supprimé.`,
    backAgain: (title) => `« ${title} » est de retour.`,
    last: "Le seul scénario ne peut pas être supprimé.",
    tooLong: "Un nom a de 1 à 200 caractères.",
  },

  compare: {
    title: "Comparer des scénarios",
    choose: "Côte à côte",
    chooseSays: "Choisissez-en deux ou plus. Les autres sont comparés au premier.",
    onlyOne:
      "Il n'y a qu'un scénario pour l'instant. Enregistrez une copie, changez-y quelque chose, et les deux pourront être mis côte à côte ici.",
    sameScenario: "Choisissez-en au moins deux.",
    working: "Calcul des scénarios…",
    cost: "Coût",
    lists: "Lignes qui diffèrent",
    notThere: "absente",
    there: "présente",
    row: (row) => `ligne ${row}`,
    rowsMore: (count) => `et ${many(count, "autre ligne", "autres lignes")}`,
    bars: "Tracer en barres",
    barsFor: "Résultat",
    barsSay: (label) => `${label}, une barre par scénario`,
    inputs: "Ce qui a été choisi autrement",
    results: "Ce qui en découle",
    checks: "Vérifications",
    noDifference: "Il n'y a aucune différence entre eux.",
    same: (count) =>
      many(count, "autre entrée est la même partout.", "autres entrées sont les mêmes partout."),
    what: "Quoi",
    rows: (count) => many(count, "ligne", "lignes"),
  },

  curves: {
    of: (member) => `Le long des pièces : ${member}`,
    says: "Les triangles sont des appuis, les anneaux des joints. Le moment est dessiné du côté tendu, la flèche vers le bas, tous deux très agrandis. Le plus grand de chacun est marqué, avec sa distance du premier bout.",
    greatest: (text, place) => `${text} à ${place}`,
  },
  drawings: {
    title: "Dessins",
    choose: "Dessin",
    none: "Cette sorte de classeur n'a pas de dessins.",
    nothing: "Rien à dessiner : les nombres manquent.",
    layers: "Couches",
    key: "Ce que désignent les numéros du dessin",
    apart: "Écarter les couches",
    nearer: "Plus près",
    farther: "Plus loin",
    fit: "Ajuster",
    view: "Vue",
    keys: "Glissez, ou utilisez les flèches, pour déplacer ; + et −, ou la molette une fois le dessin activé, pour approcher ou éloigner ; 0 pour ajuster.",
    picture: (title) =>
      `Dessin : ${title}. Les flèches le déplacent, plus et moins l'approchent et l'éloignent, 0 l'ajuste.`,
    described: (says) => `${says} Les mêmes choses sont listées sous le dessin.`,
    pointed: "Pointé",
    pointHint: "Pointez une chose du dessin, ou appuyez dessus, pour voir ce que c'est.",
    row: (label, row) => `${label}, ligne ${row}`,
    toWorksheet: "Voir dans la feuille de calcul",
    next: "Chose suivante",
    previous: "Chose précédente",
    letGo: "Lâcher",
    before: "En tirets : le contour d'avant le dernier changement.",
    list: "Ce qui est dessiné, en liste",
    measured: "Cotes",
    count: (count) => many(count, "chose", "choses"),
    handle: (label) => `${label} : glissez, ou utilisez les flèches`,
    handleHint: "Les poignées rondes changent les dimensions principales.",
    show: "Voir dans le dessin",
    showRow: (row) => `Voir la ligne ${row} dans le dessin`,
    notDrawn: (label) => `Avec ces nombres, ${label} n'est dans aucun dessin.`,
  },

  kept: {
    saved: "Enregistré dans ce navigateur",
    saving: "Enregistrement…",
    nothing: "Rien à enregistrer encore",
    denied:
      "Non enregistré : ce navigateur ne laisse pas les pages conserver quoi que ce soit. Votre travail dure jusqu'à la fermeture de cette page ; enregistrez-le dans un fichier pour le garder.",
    full: "Non enregistré : l'espace du navigateur est plein. Libérez de la place, ou enregistrez dans un fichier ; Pegbook réessaie à chaque changement.",
    overtaken:
      "Non enregistré : ce classeur a été changé dans un autre onglet. Choisissez ci-dessous lequel continue.",
    cleared: "Non enregistré : l'espace du navigateur a été vidé pendant que cette page était ouverte.",
    failed: (reason) =>
      `Non enregistré : ${reason}. Pegbook réessaie à chaque changement ; enregistrez dans un fichier pour être sûr.`,
    unreadable: (title, reason) =>
      `Le classeur « ${title} » n'a pas pu être ouvert. ${reason} Il est conservé tel quel dans la liste de l'accueil ; un autre classeur est ouvert.`,
    notRead: (reason, others) =>
      `Le classeur enregistré a été ouvert, mais tout n'a pas pu servir : ${reason}${others === 0 ? "" : ` Il en va de même à ${many(others, "autre endroit", "autres endroits")}.`} Ce qui était enregistré y reste ; entre-temps, c'est la valeur du modèle qui sert.`,
    elsewhere:
      "Ce classeur a été changé dans un autre onglet. Rien ici n'est enregistré par-dessus. Prenez ce qu'a l'autre onglet, ou gardez le vôtre en copie à côté.",
    takeOther: "Prendre l'autre",
    keepCopy: "Garder le mien en copie",
    tookOther: "Voici ce que l'autre onglet a enregistré. Annuler fait revenir le vôtre, en copie à côté.",
    copyTitle: (title) => `${title}, copie`,
    keptCopy: (title) =>
      `Le vôtre continue ici sous « ${title} ». Ce que l'autre onglet a enregistré est dans la liste de l'accueil.`,
    copyWithoutPhotos: (title, reason) =>
      `Le vôtre continue ici sous « ${title} », mais sans ses photos : elles sont encore avec ce que l'autre onglet a enregistré, dans la liste de l'accueil. ${reason}`,
    removedElsewhere:
      "Ce classeur a été supprimé dans un autre onglet. Il est encore entier ici : changez quelque chose, ou enregistrez-le dans un fichier, et il est conservé de nouveau.",
    savedAgain: (count) =>
      `L'espace du navigateur a été vidé pendant que cette page était ouverte. Ce que la page avait encore est enregistré de nouveau : ${many(count, "classeur", "classeurs")}. Supprimez dans l'accueil ce dont vous ne voulez pas.`,
  },

  files: {
    save: "Enregistrer dans un fichier",
    open: "Ouvrir un fichier",
    opened: (title) => `Fichier ouvert comme classeur à part, « ${title} ».`,
    refused: (name, reason) =>
      `« ${name} » n'a pas été ouvert. ${reason} Le classeur ouvert est resté tel quel.`,
    tooLarge: (bytes, most) =>
      `Il fait ${number(Math.ceil(bytes / 1e6))} Mo, et un fichier de plus de ${number(most / 1e6)} Mo n'est pas ouvert. Choisissez-en un autre. S'il a été enregistré ici, supprimez des scénarios ou des lignes de ce classeur dans le navigateur qui l'a, et enregistrez-le de nouveau.`,
    tooLargeToOpen: (bytes, most) =>
      `Le fichier fait ${number(Math.ceil(bytes / 1e6))} Mo, et un fichier de plus de ${number(most / 1e6)} Mo n'est pas ouvert ici. Supprimez les scénarios ou les lignes dont vous n'avez plus besoin, et enregistrez de nouveau : jusque-là, ce navigateur seul a le classeur.`,
    photosLeftOut: (count, most) =>
      `${many(count, "photo n'est", "photos ne sont")} pas dans le fichier : avec toutes, il dépasserait ${number(most / 1e6)} Mo. Les plus récentes ont été laissées de côté.`,
    photosTooMany: (count, most) =>
      `${many(count, "photo n'est", "photos ne sont")} pas dans le fichier : un fichier en contient au plus ${number(most)}. Les plus récentes ont été laissées de côté, et ne sont que dans ce navigateur.`,
    withoutPhotos: (reason) => `Le fichier a été enregistré sans ses photos. ${reason}`,
    photosNotKept: (reason) =>
      `Le classeur est ouvert, mais les photos du fichier n'ont pas toutes été conservées. ${reason}`,
    photosNotRead: (count) =>
      `Le classeur est ouvert, mais ${many(count, "photo", "photos")} du fichier ${count === 1 ? "n'a pas pu être lue" : "n'ont pas pu être lues"} comme image d'une taille raisonnable et ${count === 1 ? "a été laissée" : "ont été laissées"} de côté.`,
    unreachable:
      "Le navigateur n'a pas pu le lire : il a peut-être été déplacé ou supprimé, ou vous n'avez pas le droit de le lire.",
    notJson:
      "Ce n'est pas un classeur enregistré ici, ou il n'est pas entier : la copie s'est peut-être arrêtée avant la fin. Enregistrez-le de nouveau, ou recopiez-le.",
    isTable:
      "C'est un tableau ou une feuille de calcul, et non un classeur enregistré. Un tableau s'importe sur la feuille : ouvrez la ligne du tableau, comme celui des prix, et choisissez « Importer un CSV… ».",
    drop: "Relâchez pour ouvrir le fichier.",
  },

  updates: {
    waiting: "Une version plus récente est là. Rechargez quand cela vous convient.",
    reload: "Enregistrer et recharger",
    notSaved:
      "Page non rechargée, car le classeur ouvert n'a pas pu être enregistré dans ce navigateur. Enregistrez-le d'abord dans un fichier, puis rechargez la page.",
  },

  startAgain: "Repartir des valeurs du modèle",
  startedAgain: (title) => `« ${title} » est revenu aux valeurs du modèle.`,
  undo: "Annuler",
  dismiss: "Fermer",
  notices: "Avis",

  guide: {
    title: "Première fois ici ?",
    steps: [
      "Les champs au bord épais, à gauche, sont à vous. Changez-en un, en pieds et pouces ou en métrique.",
      "Tous les autres nombres suivent. Ceux qui ont bougé montrent ce qu'ils étaient avant.",
      "Appuyez sur une ligne pour voir sa formule, pourquoi elle existe et d'où elle vient. Appuyez sur un nom pour aller plus loin.",
      "Enregistrez une copie avant d'essayer une autre dimension, puis mettez les deux côte à côte sous Comparer.",
      "Le premier classeur est un exemple pour essayer. Quand vous êtes prêt, commencez le vôtre ; les deux sont conservés.",
    ],
    done: "Compris",
    show: "Voir le guide",
  },

  steps: {
    title: "Étapes des travaux",
    says: "Dans l'ordre où elles se font. Les nombres suivent la feuille de calcul ; les coches et les notes sont conservées avec le classeur.",
    none: "Cette sorte de classeur n'a pas d'étapes : elle répond à une seule question.",
    done: (count, of) => `${count} sur ${many(of, "étape faite", "étapes faites")}`,
    allDone: "Toutes les étapes sont cochées.",
    ready: "Tout est-il là pour la prochaine étape ?",
    readyFor: (title) => `Ensuite : ${title}.`,
    readyCount: (here, of) => `${here} sur ${many(of, "chose", "choses")} sur place`,
    tick: (title) => `Fait : ${title}`,
    people: (count) => (count === "1" ? "1 personne" : `${count} personnes`),
    needs: "Ce qu'il faut",
    tools: "Outils",
    cautions: "Attention",
    hold: "Avant de continuer",
    waits: "Ce qui prend du temps tout seul",
    weather: "Météo",
    safeStop: "Un bon moment pour s'arrêter",
    note: "Vos notes",
    calendar: "Dans un calendrier",
    calendarSays:
      "Un fichier avec une entrée par étape, l'une après l'autre en journées entières, et les jours où commander ce qu'il faut. Les attentes, la météo et les congés n'y sont pas : déplacez ce qui doit l'être.",
    start: "Premier jour",
    delivery: "Jours entre la commande et la livraison",
    orderFor: (stage) => `À commander aujourd'hui au plus tard : ${stage}`,
    saveCalendar: "Enregistrer les dates en fichier de calendrier",
    calendarFile: "pegbook-etapes.ics",
    noteSays: (title) => `Vos notes sur : ${title}`,
    safeStopMark: "arrêt possible",
    photos: "Vos photos",
    photosSay:
      "Conservées dans ce navigateur seulement, réduites, sans le lieu que l'appareil photo y a inscrit. Elles accompagnent un fichier enregistré, et sont supprimées avec le classeur.",
    addPhotos: "Ajouter des photos",
    addPhotosSays: (title) => `Ajouter des photos à : ${title}`,
    photo: (title, place, taken) => `Photo ${place} de : ${title}, ajoutée le ${taken}`,
    removePhoto: "Retirer",
    removePhotoSays: (title, place) => `Retirer la photo ${place} de : ${title}`,
    photoRemoved: "Photo retirée.",
    notAPhoto: (name) =>
      `« ${name} » n'a pas été ajouté : le navigateur ne peut pas le lire comme une image.`,
    photoNotKept: (reason) => `La photo n'a pas été conservée. ${reason}`,
  },

  buyList: {
    title: "Liste d'achats",
    says: "Cochez ce que vous avez acheté. Les quantités suivent la feuille de calcul : changez une dimension, et la liste dit ce qui manque et ce qui peut être retourné.",
    none: "Cette sorte de classeur n'a rien à acheter : elle répond à une seule question.",
    lines: "Tout ce qu'il faut acheter",
    next: (stage) => `Il manque encore pour la prochaine étape : ${stage}`,
    nextReady: "Tout ce qui s'achète pour elle est là.",
    by: "Groupé par",
    groupings: { group: "Rayon du magasin", supplier: "Fournisseur", stage: "Étape des travaux" },
    nobody: "Personne de nommé",
    elsewhere: "Ailleurs",
    amount: (amount, unit) => `${amount} ${unit}`,
    tick: (thing) => `Acheté : ${thing}`,
    more: (price, thing) => `${price} : détails sur ${thing}`,
    unpriced: "sans prix",
    short: (amount, unit) => `Il manque encore : ${counted(amount, unit)}`,
    back: (amount, unit) => `Peut être retourné : ${counted(amount, unit)}`,
    facts: {
      supplier: "Chez",
      price: "Prix",
      need: "Besoin",
      left: "Reste",
      stages: "Sert à",
      lead: "Jours d'avance pour commander",
      orderBy: "À commander avant le",
      assumed: "Tenu pour acquis",
    },
    priceOf: (price, unit) => `${price} pour ${unit}`,
    tickFirst:
      "Cochez-le quand vous l'avez acheté ; il y a alors de la place pour ce que vous avez payé et utilisé.",
    notes: { bought: "Acheté", paid: "Vraiment payé", used: "Utilisé" },
    plans: "Chez qui acheter",
    plansSay: "Avec livraison et taxes, avant l'arrondi au comptant.",
    noPlans: "Entrez ci-dessous les prix de vos fournisseurs, et leur meilleure combinaison apparaîtra ici.",
    provenSays: (what, text) => `${what} : ${text}. Aucune commande à ces prix ne coûte moins cher.`,
    plan: (finding, orders) => `${finding} ; ${orders === "1" ? "1 commande" : `${orders} commandes`}`,
    saving: (amount) => `La combinaison économise ${amount}`,
    trip: (plan, total, saving) =>
      `Un seul voyage : ${plan}, ${total}. Combiner économise ${saving} de plus.`,
    sums: "Ce que ça donne",
    invoice: (supplier) => `Facture : ${supplier}`,
    costLine: (line, lines) => (lines === "0" ? line : `${line} (${lines})`),
    gone: "Acheté, et plus sur la liste",
    own: "Autre chose à acheter",
    ownSays:
      "Ce que le classeur ne compte pas : charnières, lampe, peinture. Cela s’ajoute à la liste, à ses sommes et au coût.",
    prices: "Prix",
    pricesSay:
      "Une ligne par chose, par fournisseur et par palier de prix. La liste d'une cour à bois peut être importée d'un fichier.",
  },

  since: {
    title: (scenario) => `Depuis « ${scenario} »`,
    says: "Si vous aviez acheté tout ce qui était sur sa liste, voici ce que le scénario ouvert demande encore, et ce qui peut être retourné.",
    same: "Rien à acheter ni à retourner : la liste est restée la même.",
    toBuy: "À acheter",
    toReturn: "Peut être retourné",
    gone: "N’est plus sur la liste : tout peut être retourné",
    recounted: "Compté dans une autre unité depuis : comparez à la main",
  },

  setOut: {
    title: "Feuille d'implantation",
    says: "Tout se mesure à partir du coin A. Les longueurs suivent le premier long côté, les largeurs le traversent.",
    none: "Cette sorte de classeur n'a rien à implanter.",
    along: "sur la longueur",
    across: "sur la largeur",
    straight: "en ligne droite depuis A",
    line: (name) => `Ligne ${name}`,
    nearFace: "face proche",
    centre: "centre",
    farFace: "face éloignée",
    place: (x, y) => `${x} en longueur, ${y} en largeur`,
    dig: "creuser",
    toHole: "du cordeau au fond du trou",
    toStone: "du cordeau au dessus de la pierre",
    courses: "blocs",
    measured: "Ce que vous avez mesuré",
    measuredSays:
      "Entrez ce que dit le ruban. A et B restent où ils sont ; ce sont les coins éloignés qu'on pousse.",
    push: (corner) => `Pousser ${corner}`,
    farSide: (length) =>
      `De D à C, il devrait maintenant y avoir ${length}. Si le ruban y dit autre chose, l'une des cinq mesures a été mal lue.`,
  },

  cutList: {
    title: "Liste de coupe",
    says: "Quelles planches prendre et quoi couper dans chacune, dans cet ordre. Écrivez le nom de chaque morceau dessus au sortir de la scie.",
    none: "Cette sorte de classeur n'a rien à couper : elle répond à une seule question.",
    empty: "Il n'y a encore rien à couper. Remplissez d'abord la feuille de calcul.",
    proven: "Prouvé : aucun plan ne demande moins.",
    provenSays: (what, text) => `${what} : ${text}. Aucun plan pour ces morceaux ne demande moins.`,
    gap: (share) => `À ${share} du meilleur, au plus.`,
    gapSays: (what, text, bound) =>
      `${what} : ${text}. Aucun plan ne demande moins de ${bound} ; on ignore si l'un s'en approche davantage.`,
    unknown: "On ignore à quelle distance du meilleur il se trouve.",
    working: "Un meilleur plan est recherché. Celui-ci peut servir tel quel.",
    outOfTime: "La recherche s'est arrêtée au bout de son temps. Voici le meilleur plan trouvé.",
    failed:
      "La recherche exacte n'a pas pu tourner dans ce navigateur. Voici le plan fait sur-le-champ : il peut servir, et ce qui le sépare au plus du meilleur est dit ici.",
    advice: "Ce qui tomberait mieux",
    unmet: "Ce qui ne tombe pas juste",
    boards: (size) => `Planches de ${size}`,
    ofLength: (count, length) => `${many(count, "planche", "planches")} de ${length}`,
    ownLength: (count, length) => `${number(count)} à vous, ${length}`,
    board: (name) => `Planche ${name}`,
    drawn: (name, length, pieces, left) =>
      `Planche ${name}, longue de ${length}, coupée en ${pieces} ; ${left}.`,
    piece: (part, mark) => (/^\d/.test(mark) ? `${part} ${mark}` : `${part}, ${mark}`),
    left: (length) => `il reste ${length}`,
    nothingLeft: "il ne reste rien",
    key: "Dans les dessins, un morceau porte son numéro, un trait de scie est un gros trait, et ce qui reste est hachuré.",
    leftOver: "Chutes qui restent",
    leftOverSays: "Ce qui est assez long peut servir de piquets, de cales, ou au prochain chantier.",
    leftOverNone: "Il ne reste que de la sciure.",
    offcut: (count, length) => `${number(count)} × ${length}`,
    own: "Planches et chutes que vous avez déjà",
    ownSays: "Entrez-les dans la feuille de calcul, et elles sont coupées avant d'acheter une planche.",
    joints: "Joints, et où ils tombent",
    jointsSay:
      "Les pièces plus longues que toute planche sont faites de plusieurs morceaux, qui se rejoignent ici.",
    jointsNone: "Aucune pièce n'a besoin de joint.",
    others: "Autres recherches",
    table: "Le plan de coupe dans la feuille de calcul",
  },

  buildBook: {
    title: (workbook) => `Cahier de chantier : ${workbook}`,
    says: "Tout sur papier, à emporter : dimensions, dessins à l'échelle, feuille d'implantation, listes, étapes avec des cases à cocher, et ce sur quoi les nombres reposent.",
    paper: "Papier",
    papers: { a4: "A4", letter: "Lettre" },
    print: "Imprimer le cahier de chantier",
    fullSize:
      "Imprimez-le à pleine taille (100 %, sans « ajuster à la page »), sinon les dessins perdent leur échelle ; posez ensuite une règle sur une barre d'échelle. Le navigateur peut aussi l'enregistrer en PDF.",
    size: "Dimensions",
    changed: "Choisi autrement que dans le modèle",
    cautions: "Avant de construire",
    scale: (ratio) => `Échelle 1:${number(ratio)}.`,
    notToScale: "Pas à l'échelle.",
    turned: "Tournez la page pour le lire.",
    scaleSays:
      "Chacun est dessiné à la plus grande échelle usuelle qui tient. Posez d'abord une règle sur la barre d'échelle : si elle n'a pas la longueur dite, l'imprimante a changé la taille. Quand un nombre est écrit, c'est lui qui vaut.",
    cutList: "Liste de coupe",
    buyList: "Liste d'achats",
    tick: "À cocher",
    assumptions: "Ce sur quoi les nombres reposent",
    assumptionsSay:
      "Tout ce qui est donné plutôt que calculé. Les numéros à droite mènent aux sources, à la fin.",
    inTable: "un tableau de la feuille de calcul",
  },

  cautionsTitle: "Avant de construire",
  cautionsAll: (count) => `Lire les ${number(count)} mises en garde`,
}

/** The same, each text typeset as French is. */
function typesetAll<T>(said: T): T {
  if (typeof said === "string") return typeset(said) as T
  if (typeof said === "function")
    return ((...given: readonly unknown[]) => typeset(String(said(...given)))) as T
  if (Array.isArray(said)) return said.map(typesetAll) as T
  return Object.fromEntries(
    Object.entries(said as Record<string, unknown>).map(([name, text]) => [name, typesetAll(text)]),
  ) as T
}

export const fr: InterfaceWords = typesetAll(words)
