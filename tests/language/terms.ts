/** One term for one thing: words that are not used, and the glossary's word in their place. Words in brackets are explanations and may stand. */
export interface Term { readonly not: RegExp; readonly use: string }

const term = (words: string, use: string): Term => ({ not: new RegExp(String.raw`\b(?:${words})\b`, 'i'), use })

export const terms: readonly Term[] = [
  term('main switch|master switch|battery switch|isolation switch|isolating switch|disconnect switch|battery main', 'Battery isolator'),
  term('ampacity', 'Current-carrying capacity'),
  term('breaker box|fuse box|fusebox|switchboard|panelboard|distribution board', 'Panel'),
  term('chart ?plotters?|plotters?|MFDs?|multi-?function displays?', 'Display'),
  term('GPS', 'GNSS'),
  term('bus bars?', 'Busbar'),
  term('earth leakage|leakage breaker|GFCI|ELCI|ground fault', 'Residual-current device'),
  term('grounding conductors?|ground wires?|earth wires?', 'Protective conductor'),
  term('breaking capacity|AIC', 'Interrupting capacity'),
  term('voltage loss|voltage losses', 'Voltage drop'),
  term('life ?vests?|life jackets?|life-jackets?', 'Lifejacket'),
  term('life rafts?|life-rafts?', 'Liferaft'),
  term('life buoys?|life-buoys?|life rings?|lifebelts?', 'Lifebuoy'),
  term('man overboard|MOB', 'Person overboard'),
  term('sea cocks?|sea-cocks?|sea valves?|skin fittings?', 'Seacock'),
  term('EPIRBs?', 'Distress beacon'),
  term('aerials?|antennae', 'Antenna'),
  term('amps?|amp hours?|amp-hours?', 'Ampere'),
  term('MPPTs?|solar regulators?|solar chargers?', 'Solar charge controller'),
  term('wi-?fi', 'Wireless network'),
  term('by-pass|manual overrides?', 'Manual bypass'),
  term('stern lights?|steaming lights?|riding lights?|nav lights?|navigation lamps?', 'Navigation light'),
  term('shore (?:power )?sockets?|shore connectors?', 'Shore inlet'),
  term('changeover switch|change-over switch|transfer switch|selector switch', 'Source selector'),
  term('starter batter(?:y|ies)|cranking batter(?:y|ies)', 'Starting battery'),
  term('domestic batter(?:y|ies)|service batter(?:y|ies)|leisure batter(?:y|ies)', 'House battery'),
  term('T-pieces?|T-connectors?', 'Tee'),
  term('trunk line|trunk cable', 'Backbone'),
  term('fuel cut-?offs?|fuel cocks?', 'Fuel shut-off'),
  term('fire bottles?', 'Fixed extinguisher'),
]

/** British spelling as this project has it: -ise, where the dictionary takes both. Ionizing stands in titles of publications. */
export const endsInIze = /\b(?!(?:size|sized|sizes|sizing|resize|seize|seizes|seized|seizing|prize|prizes|capsize|capsizes|capsized|capsizing|undersized|oversized|ionized|ionizing)\b)[a-z]+iz(?:e|es|ed|ing|ation|ations|er|ers)\b/i
