import type { EntryKind, SourceKind, UnitSystem, Verdict } from "@pegbook/engine"

/** One of a thing or several of it: "1 number", "61 numbers". */
function many(count: number, one: string, several: string): string {
  return `${count.toLocaleString("en")} ${count === 1 ? one : several}`
}

const KINDS: Readonly<Record<EntryKind, string>> = {
  input: "input",
  figure: "figure",
  formula: "formula",
  column: "column",
  solved: "solved",
  check: "check",
}

const KIND_SAYS: Readonly<Record<EntryKind, string>> = {
  input: "Yours to choose.",
  figure: "A published or trade figure. You may put your own in its place.",
  formula: "Worked out from other entries.",
  column: "Worked out once for each row of its table.",
  solved: "Found by a search, not by one formula.",
  check: "One entry held against a limit.",
}

const SOURCE_KINDS: Readonly<Record<SourceKind, string>> = {
  standard: "Standard",
  handbook: "Handbook",
  measured: "Measured",
  geometry: "Geometry",
  common_practice: "Common practice",
  memory: "From memory",
  user: "Your own",
}

const VERDICTS: Readonly<Record<Verdict, string>> = {
  passes: "Passes",
  near: "Near the limit",
  fails: "Fails",
  outside_table: "Outside the table",
  needs_entry: "Needs an entry",
  no_verdict: "No verdict",
}

/** After a number of checks: "1 fails", "3 fail". */
const VERDICT_COUNTS: Readonly<Record<Verdict, readonly [one: string, several: string]>> = {
  passes: ["passes", "pass"],
  near: ["is near the limit", "are near the limit"],
  fails: ["fails", "fail"],
  outside_table: ["is outside the table", "are outside the table"],
  needs_entry: ["needs an entry", "need an entry"],
  no_verdict: ["has no verdict", "have no verdict"],
}

/** What each kind's drawing shows, for who cannot see it; `other` is of any platform. */
const SKETCHES: Readonly<Record<string, string>> = {
  "game-table-platform":
    "Drawing, seen from the side: a game table on a level platform. The lawn falls from left to right, so the stacks of blocks under the platform grow taller to the right. A net stands at one end.",
  "shed-base":
    "Drawing, seen from the side: a small shed with a pitched roof on a floor of joists, carried by three timbers that lie on one pad of stone.",
  boardwalk:
    "Drawing, seen from above at an angle: a narrow path of boards laid crosswise on two long timbers, running away over soft ground with reeds.",
  "ground-level-deck":
    "Drawing, seen from the side: a low deck standing free in a garden, its boards just above the ground and a step at each end, with a chair and a plant in a pot on it and a tree behind.",
  "greenhouse-floor":
    "Drawing, seen from the side: a greenhouse with plants on benches, over a floor of boards with gaps between them, on joists on a timber that lies on slabs. A mesh goes down into the ground at either end.",
  other: "Drawing, seen from the side: a platform of boards on timbers that stand on blocks on the ground.",
}

const SYSTEMS: Readonly<Record<UnitSystem, string>> = { us: "Feet and inches", metric: "Metric" }

/** Every word of the interface. Trade sentences come from the template, problems from the engine. */
export const en = {
  many,
  product: "Pegbook",

  screens: {
    label: "Screens",
    start: "Start",
    worksheet: "Worksheet",
    drawings: "Drawings",
    "cut-list": "Cut list",
    "buy-list": "Buy list",
    "set-out": "Set-out",
    steps: "Steps",
    compare: "Compare",
  },
  skip: "Skip to the page’s content",
  opening: "Opening the workbook…",

  start: {
    title: "What are you building?",
    says: "Choose what comes nearest. Each one is a whole workbook with sizes already in it; you change those that are yours, and every other number follows.",
    choices: "Kinds of workbook",
    units: "Lengths in",
    unitsSay:
      "For the workbooks that you start here. Whatever you type in the other is understood as well, and each workbook can be switched at any time.",
    begin: "Start this one",
    beginSays: (title: string) => `Start this one: ${title}`,
    own: "Start your own",
    another: "Start another",
    toWorkbooks: (count: number) => `Go to your ${many(count, "workbook", "workbooks")}`,
  },
  sketches: SKETCHES,

  workbooks: {
    title: "Your workbooks",
    none: "None yet. A workbook is listed here as soon as you start one, or change something in the one that is open.",
    where: "They are kept in this browser, on this device only.",
    open: "Open",
    openSays: (title: string) => `Open ${title}`,
    here: "Open now",
    back: (title: string) => `Go on with ${title}`,
    goOn: "Go on",
    rename: "Rename",
    renameSays: (title: string) => `Rename ${title}`,
    remove: "Delete",
    removeSays: (title: string) => `Delete ${title}`,
    newTitle: "New name",
    kind: (title: string) => `Kind: ${title}`,
    changed: (moment: string) => `Last changed ${moment}`,
    changedUnknown: "Not known when it was last changed",
    untitled: "A workbook without a name",
    unreadable: (reason: string) => `It cannot be opened, and is kept untouched. ${reason}`,
    removed: (title: string) => `Deleted the workbook “${title}”.`,
    backAgain: (title: string) => `The workbook “${title}” is back.`,
    refused: (reason: string) => `That did not work. ${reason}`,
  },

  columns: { what: "What it is", value: "Value", how: "How it was worked out", from: "Where from" },
  kinds: KINDS,
  kindSays: KIND_SAYS,
  sourceKinds: SOURCE_KINDS,
  verdicts: VERDICTS,
  systems: SYSTEMS,

  block: {
    label: "This workbook",
    workbook: "Workbook",
    scenario: "Scenario",
    shownIn: "Shown in",
    checks: "Checks",
    kept: "Kept",
    look: "Look",
    more: (scenario: string) => `Scenario: ${scenario}; units, saving`,
  },
  look: { device: "As the device", light: "Light", dark: "Dark" },

  checkCount: (verdict: Verdict, count: number) => many(count, ...VERDICT_COUNTS[verdict]),
  goToFirst: (verdict: Verdict) => `Go to the first that says: ${VERDICTS[verdict].toLowerCase()}`,
  noChecks: "This workbook has no checks.",
  blankInputs: (count: number) => `${many(count, "input is", "inputs are")} still blank`,

  sections: "Sections",
  jump: "Jump to a section",
  entries: (count: number) => many(count, "entry", "entries"),
  close: "Close",

  search: {
    label: "Find an entry",
    placeholder: "Find an entry by name",
    hint: "Press / to come here. Arrows choose, Enter goes.",
    none: (words: string) => `Nothing is called “${words}”. Try one word of it.`,
    found: (count: number) => `${many(count, "entry", "entries")} found`,
  },

  walk: {
    label: "Where you came from",
    back: (label: string) => `Back to ${label}`,
    forget: "Forget the trail",
  },

  moved: {
    count: (numbers: number) =>
      numbers === 1 ? "1 number moved" : `${numbers.toLocaleString("en")} numbers moved`,
    none: "No number moved.",
    list: "List them",
    hideList: "Hide the list",
    next: "Next",
    nextSays: "Next that moved",
    previous: "Previous",
    previousSays: "Previous that moved",
    at: (place: number, of: number) => `${place} of ${of}`,
    was: "was",
    ratioWas: "ratio was",
    nowSays: "now",
    cells: (count: number) => many(count, "cell moved", "cells moved"),
    row: (row: number) => `row ${row}`,
    title: "What the last change moved",
    old: "Old",
    now: "New",
  },

  row: {
    open: (label: string) => `${label}: details`,
    blank: "blank",
    noValue: "no value",
    problem: "cannot be worked out",
    needsEntry: "needs an entry",
    overridden: "Your own value.",
    changed: "Changed.",
    putBack: (text: string) => `Put back ${text}`,
    putBackBlank: "Make it blank again",
    fromMemory: "from memory",
    against: (demand: string, limit: string, sense: "at_most" | "at_least") =>
      `${demand}, ${sense === "at_most" ? "at most" : "at least"} ${limit}`,
    moreSources: (count: number) => `and ${count} more`,
    asGiven: "As published",
    yours: "Yours to choose",
    accepts: (text: string) => `Yours: ${text}`,
    blankMeans: (meaning: string) => `blank: ${meaning}`,
    orBlank: (says: string, meaning: string) => `${says}. Left blank: ${meaning}`,
    searched: "Searched for",
    noSource: "no source given",
  },

  detail: {
    why: "Why",
    formula: "Formula",
    howManyRows: "How many rows",
    withValues: "With values put in",
    accepted: "Accepted",
    typedAs: "Typed as",
    readAs: "Read as",
    original: "Template’s value",
    published: "Published value",
    leansOn: "Leans on",
    leansOnNothing: "Nothing: it is given, not worked out.",
    leanedOnBy: "What leans on it",
    leanedOnByNothing: "Nothing leans on it.",
    showAll: (count: number) => `Show all ${count}`,
    sources: "Where from",
    cautions: "Take care",
    problems: "What is wrong",
    name: "Name",
    kind: "Kind",
    ownValue: (label: string) => `Your own value for ${label}`,
    ownValueSays: "Put your own in its place",
    verdict: "Verdict",
    ratio: "Ratio",
    demand: "Demand",
    limit: "Limit",
    atMost: "must not be more than the limit",
    atLeast: "must not be less than the limit",
    advice: "What could be changed",
    method: "Method",
    objective: "Made best",
    bound: "Proven limit",
    provenBest: "No answer can be better.",
    unmet: "Could not be satisfied",
    edition: (edition: string) => `edition ${edition}`,
  },

  table: {
    scroll: (label: string) => `${label}, table. Scrolls sideways.`,
    rowHead: "Row",
    hint: "Press a column’s title for its formula, or a value for that row’s working.",
    openColumn: (label: string) => `${label}: this column’s formula`,
    cell: (row: number, column: string, text: string) => `${text} (row ${row}, ${column})`,
    rowOf: (row: number, of: number) => `Row ${row} of ${of}`,
    previousRow: "Row before",
    nextRow: "Row after",
    showAllRows: (count: number) => `Show all ${count.toLocaleString("en")} rows`,
    empty: "No rows.",
    backToTable: "Close this column",
    add: "Add a row",
    putBack: "Put back the template’s rows",
    remove: (row: number) => `Remove row ${row}`,
    removeShort: "Remove",
    cellLabel: (column: string, row: number) => `${column}, row ${row}`,
    unfinished: (row: number, columns: readonly string[]) =>
      `Not in force yet: row ${row} still needs ${columns.join(" and ")}.`,
    rowsInForce: "The rows as they were are still in force.",
    noneYet: "No rows yet.",
  },

  exchange: {
    bringIn: "Bring in from CSV…",
    saveCsv: "Save as CSV",
    saveOpenDocument: "Save as OpenDocument",
    loading: "One moment…",
    notLoaded: "That part of the page could not be fetched. Reload the page and try again.",
    headings: (names: readonly string[]) =>
      `In the first line: ${names.join(", ")}. Commas, semicolons or tabs between them.`,
    headingUnit: (name: string, unit: string) =>
      `A heading may give the unit of the numbers under it, such as “${name} (${unit})”.`,
    file: "A file",
    paste: "Or paste it here",
    found: (good: number, bad: number) =>
      `${many(good, "row", "rows")} can be put in${bad === 0 ? "." : `; ${many(bad, "row", "rows")} cannot.`}`,
    bad: "Left out, until they are put right",
    good: "What would be put in",
    line: "Line",
    duplicate: (line: number, first: number) =>
      `Line ${line} says the same as line ${first}; it is left out.`,
    formula: (line: number, column: string) =>
      `Line ${line}, ${column}: this looks like a formula. It is not run; it stays the text that it is.`,
    unknown: (names: readonly string[]) => `Not a column of this table, and left out: ${names.join(", ")}.`,
    more: (count: number) => `and ${count.toLocaleString("en")} more`,
    mark: "Decimals are written with a",
    marks: { point: "point: 12.50", comma: "comma: 12,50" },
    thereAre: (count: number) => `There ${count === 1 ? "is 1 row" : `are ${count} rows`} already`,
    instead: "Put these in their place",
    behind: "Put these behind them",
    putIn: (count: number) => `Put ${many(count, "row", "rows")} in`,
    wasPutIn: (count: number, label: string) => `Put ${many(count, "row", "rows")} in “${label}”.`,
  },

  field: {
    inForce: (text: string) => `Still in force: ${text}.`,
    inForceBlank: "It is still blank.",
    revert: "Put that back",
    yes: "yes",
    no: "no",
    choose: "Choose…",
  },

  scenario: {
    choose: "Scenario",
    saveCopy: "Save a copy",
    rename: "Rename",
    remove: "Delete",
    compare: "Compare",
    copyTitle: "Name of the copy",
    newTitle: "New name",
    save: "Save",
    cancel: "Cancel",
    suggestion: (title: string) => `${title}, changed`,
    saved: (title: string) => `Saved a copy. You are now working in “${title}”.`,
    removed: (title: string) => `Deleted “${title}”.`,
    backAgain: (title: string) => `“${title}” is back.`,
    last: "The only scenario cannot be deleted.",
    tooLong: "A name has 1 to 200 characters.",
  },

  compare: {
    title: "Compare two scenarios",
    left: "One",
    right: "The other",
    onlyOne:
      "There is one scenario so far. Save a copy, change something in it, and the two can be put side by side here.",
    sameScenario: "Both sides show the same scenario. Choose another on one side.",
    inputs: "What was chosen differently",
    results: "What follows from it",
    checks: "Checks",
    tables: "Tables",
    noDifference: "There is no difference between the two.",
    same: (count: number) => `${many(count, "other entry is", "other entries are")} the same in both.`,
    by: "Difference",
    what: "What",
    rows: (count: number) => many(count, "row", "rows"),
    ratio: (text: string) => `ratio ${text}`,
  },

  drawings: {
    title: "Drawings",
    choose: "Drawing",
    none: "This kind of workbook has no drawings.",
    nothing: "There is nothing to draw: the numbers for it are missing.",
    layers: "Layers",
    apart: "Pull the layers apart",
    nearer: "Nearer",
    farther: "Farther",
    fit: "Fit",
    view: "View",
    keys: "Drag, or use the arrow keys, to move; + and −, or the wheel once the drawing is pressed, to come nearer or go farther; 0 to fit.",
    picture: (title: string) =>
      `Drawing: ${title}. Arrow keys move it, plus and minus come nearer and go farther, 0 fits it.`,
    described: (says: string) => `${says} The same things are listed below the drawing.`,
    pointed: "Pointed at",
    pointHint: "Point at something in the drawing, or press it, to see what it is.",
    row: (label: string, row: number) => `${label}, row ${row}`,
    toWorksheet: "Show in the worksheet",
    next: "Next thing",
    previous: "Thing before",
    letGo: "Let go",
    before: "Dashed: the outline before the last change.",
    list: "What is drawn, as a list",
    measured: "Dimensions",
    count: (count: number) => many(count, "thing", "things"),
    handle: (label: string) => `${label}: drag, or use the arrow keys`,
    handleHint: "The round handles change the main sizes.",
    show: "Show in drawing",
    showRow: (row: number) => `Show row ${row} in drawing`,
    notDrawn: (label: string) => `At these numbers, ${label} is not in any drawing.`,
  },

  kept: {
    saved: "Saved in this browser",
    saving: "Saving…",
    nothing: "Nothing to save yet",
    denied:
      "Not saved: this browser does not let pages keep anything. Your work lasts until this page is closed; save it to a file to keep it.",
    full: "Not saved: the browser’s storage is full. Free some space, or save to a file; Pegbook keeps trying at every change.",
    overtaken: "Not saved: this workbook was changed in another tab. Choose below which one goes on.",
    cleared: "Not saved: the browser’s storage was cleared while this page was open.",
    failed: (reason: string) =>
      `Not saved: ${reason}. Pegbook keeps trying at every change; save to a file to be sure.`,
    unreadable: (title: string, reason: string) =>
      `The workbook “${title}” could not be opened. ${reason} It is kept untouched in the list under Start; another workbook is open.`,
    notRead: (reason: string) => `The saved workbook was opened, but not all of it could be used: ${reason}`,
    elsewhere:
      "This workbook was changed in another tab. Nothing here is saved over it. Take what the other tab has, or keep yours as a copy beside it.",
    takeOther: "Take the other’s",
    keepCopy: "Keep mine as a copy",
    tookOther: "This is what the other tab saved. Undo brings yours back, as a copy beside it.",
    copyTitle: (title: string) => `${title}, copy`,
    keptCopy: (title: string) =>
      `Yours goes on here as “${title}”. What the other tab saved is in the list under Start.`,
    removedElsewhere:
      "This workbook was deleted in another tab. It is still whole here: change anything, or save it to a file, and it is kept again.",
    savedAgain: (count: number) =>
      `The browser’s storage was cleared while this page was open. What the page still held is being saved again: ${many(count, "workbook", "workbooks")}. Whatever you do not want, delete under Start.`,
  },

  files: {
    save: "Save to a file",
    open: "Open a file",
    opened: (title: string) => `Opened the file as a workbook of its own, “${title}”.`,
    refused: (name: string, reason: string) =>
      `“${name}” was not opened. ${reason} The open workbook is as it was.`,
    tooLarge: (bytes: number, most: number) =>
      `It is ${Math.ceil(bytes / 1e6)} MB large, and a workbook is never more than ${most / 1e6} MB. Choose a file that was saved here.`,
    unreachable:
      "The browser could not read it: it may have been moved or deleted, or may not be yours to read.",
    notJson:
      "It is not a workbook that was saved here, or not all of one: it may not have been copied to its end. Save it anew, or copy it again.",
  },

  updates: {
    waiting: "A newer version is here. Reload when it suits you.",
    reload: "Save and reload",
    notSaved:
      "Not reloaded, because the open workbook could not be saved in this browser. Save it to a file first, then reload the page.",
  },

  startAgain: "Start again from the template’s values",
  startedAgain: (title: string) => `“${title}” is back to the template’s values.`,
  undo: "Undo",
  dismiss: "Dismiss",
  notices: "Notices",

  guide: {
    title: "First time here?",
    steps: [
      "Fields with a blue edge are yours to choose. Change one, in feet and inches or in metric.",
      "Every other number follows. Those that moved show what they were before.",
      "Press a row to see its formula, why it exists and where it comes from. Press a name in it to walk on.",
      "Save a copy before you try another size, then put the two side by side under Compare.",
      "The first workbook is an example to try things on. When you are ready, start your own; both are kept.",
    ],
    done: "Got it",
    show: "Show the guide",
  },

  steps: {
    title: "Steps of the work",
    says: "In the order in which they are done. Numbers follow the worksheet; ticks and notes are kept with the workbook.",
    none: "This kind of workbook has no steps: it answers one question.",
    done: (count: number, of: number) => `${count} of ${many(of, "step", "steps")} done`,
    allDone: "Every step is ticked.",
    ready: "Is everything for the next step here?",
    readyFor: (title: string) => `Next: ${title}.`,
    readyCount: (here: number, of: number) => `${here} of ${many(of, "thing", "things")} here`,
    tick: (title: string) => `Done: ${title}`,
    people: (count: string) => (count === "1" ? "1 person" : `${count} people`),
    needs: "What it takes",
    tools: "Tools",
    cautions: "Take care",
    hold: "Before you go on",
    waits: "Takes time by itself",
    weather: "Weather",
    safeStop: "A place to stop",
    note: "Your notes",
    calendar: "In a calendar",
    calendarSays:
      "A file with one entry a step, one after the other in whole days. Waiting, weather and days off are not in it: move what has to move.",
    start: "First day",
    saveCalendar: "Save a calendar file",
    calendarFile: "pegbook-steps.ics",
    noteSays: (title: string) => `Your notes on: ${title}`,
  },

  buyList: {
    title: "Buy list",
    says: "Tick what you have bought. The amounts follow the worksheet: change a size, and it says what is short and what can go back.",
    none: "This kind of workbook has nothing to buy: it answers one question.",
    lines: "Everything to buy",
    next: (stage: string) => `Still short for the next step: ${stage}`,
    nextReady: "Everything that is bought for it is here.",
    by: "Grouped by",
    groupings: { group: "Where it stands in a shop", supplier: "Supplier", stage: "Step of the work" },
    nobody: "Nobody named",
    elsewhere: "Elsewhere",
    amount: (amount: string, unit: string) => (unit === "each" ? amount : `${amount} ${unit}`),
    tick: (thing: string) => `Bought: ${thing}`,
    more: (thing: string) => `More on ${thing}`,
    unpriced: "no price",
    short: (amount: string, unit: string) => `Still short: ${amount} ${unit}`,
    back: (amount: string, unit: string) => `May go back: ${amount} ${unit}`,
    facts: {
      supplier: "From",
      price: "Price",
      need: "Needed",
      left: "Left over",
      stages: "Used in",
      lead: "Order days before you need it",
      orderBy: "Order by",
      assumed: "Taken for granted",
    },
    priceOf: (price: string, unit: string) => `${price} for ${unit}`,
    tickFirst: "Tick it when you have bought it; then there is room for what you paid and used.",
    notes: { bought: "Bought", paid: "Really paid", used: "Used" },
    plans: "Whom to buy from",
    plansSay: "With delivery and tax, before coins are rounded.",
    noPlans: "Enter your suppliers' prices below, and their best mix stands here.",
    orders: (count: string) => (count === "1" ? "1 order" : `${count} orders`),
    saving: (amount: string) => `The mixed plan saves ${amount}`,
    trip: (plan: string, total: string, saving: string) =>
      `One trip only: ${plan}, ${total}. Mixing saves ${saving} against it.`,
    sums: "What it comes to",
    invoice: (supplier: string) => `Invoice: ${supplier}`,
    costLine: (line: string, lines: string) => (lines === "0" ? line : `${line} (${lines})`),
    gone: "Bought, and on the list no more",
    prices: "Prices",
    pricesSay:
      "One line a thing, a supplier and a break of its price. A list from a yard can be brought in as a file.",
  },

  setOut: {
    title: "Set-out sheet",
    says: "Everything is measured from corner A. Lengths run along the first long side, widths across it.",
    none: "This kind of workbook has nothing to set out.",
    along: "along the length",
    across: "across the width",
    straight: "straight from A",
    line: (number: string) => `Line ${number}`,
    nearFace: "near face",
    centre: "centre",
    farFace: "far face",
    place: (x: string, y: string) => `${x} along, ${y} across`,
    dig: "dig",
    toHole: "string to bottom of hole",
    toStone: "string to top of stone",
    courses: "blocks",
    measured: "What you measured",
    measuredSays: "Enter what the tape says. A and B stay where they are; the far corners are pushed.",
    push: (corner: string) => `Push ${corner}`,
    farSide: (length: string) =>
      `D to C should now measure ${length}. If the tape says something else there, one of the five was misread.`,
  },

  cutList: {
    title: "Cut list",
    says: "Which boards to take and what to cut from each, in this order. Write the name of each piece on it as it comes off the saw.",
    none: "This kind of workbook has nothing to cut: it answers one question.",
    empty: "There is nothing to cut yet. Fill in the worksheet first.",
    proven: "Proven: no plan needs less.",
    provenSays: (what: string, text: string) => `${what}: ${text}. No plan for these pieces needs less.`,
    gap: (share: string) => `At most ${share} from the best.`,
    gapSays: (what: string, text: string, bound: string) =>
      `${what}: ${text}. No plan needs less than ${bound}; whether one comes nearer is not known.`,
    unknown: "How near to the best it is, is not known.",
    working: "A better plan is being looked for. This one can be used as it is.",
    outOfTime: "The search was stopped after its time was up. This is the best plan that was found.",
    failed:
      "The exact search could not run in this browser. This is the plan made at once: it can be used, and how far it may be from the best is said here.",
    advice: "What would come out better",
    unmet: "What does not come out",
    boards: (size: string) => `Boards of ${size}`,
    ofLength: (count: number, length: string) => `${many(count, "board", "boards")} of ${length}`,
    ownLength: (count: number, length: string) => `${count} of your own, ${length}`,
    board: (number: string) => `Board ${number}`,
    drawn: (number: string, length: string, pieces: string, left: string) =>
      `Board ${number}, ${length} long, cut into ${pieces}; ${left}.`,
    piece: (part: string, mark: string) => (mark === "" ? part : `${part} ${mark}`),
    left: (length: string) => `${length} left over`,
    nothingLeft: "nothing left over",
    key: "In the drawings a piece has its number, a saw cut is a black line, and what is left over is hatched.",
    leftOver: "Off-cuts left over",
    leftOverSays: "What is long enough may serve for pegs, packing, or the next job.",
    leftOverNone: "Nothing is left over but sawdust.",
    offcut: (count: number, length: string) => `${count} × ${length}`,
    own: "Boards and off-cuts that you have already",
    ownSays: "Enter them on the worksheet, and they are cut before any board is bought.",
    joints: "Joints, and where they land",
    jointsSay: "Pieces longer than any board are made of several, which meet here.",
    jointsNone: "No piece has to be joined.",
    others: "Other searches",
    table: "The cutting plan on the worksheet",
  },

  cautionsTitle: "Before you build",
  cautionsAll: (count: number) => `Read all ${count} cautions`,
} as const
