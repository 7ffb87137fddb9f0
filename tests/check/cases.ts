/**
 * The small vessel with one passage changed, and the whole list of findings that this brings. One case for each kind of
 * finding at least.
 */
import { changed, type Files, smallVessel } from '../support/vessel-files.js'

export interface Case {
  readonly name: string
  readonly files: Files
  /** As `listed` writes them. */
  readonly findings: readonly string[]
  /** A passage of the first finding's message, where the words matter. */
  readonly says?: string
}

const change = (name: string, file: string, from: string, to: string, findings: readonly string[], says?: string): Case =>
  ({ name, files: changed(smallVessel, file, from, to), findings, ...(says === undefined ? {} : { says }) })

const without = (name: string): Files => Object.fromEntries(Object.entries(smallVessel).filter(([file]) => file !== name))

export const schemaCases: readonly Case[] = [
  change('a misspelt key', 'circuits.yaml', 'fed-from: G1', 'fedfrom: G1', [
    'circuits.yaml:2:5 SCH201 ⟨tag⟩', 'circuits.yaml:4:5 SCH101 ⟨fedfrom⟩',
  ]),
  change('a misspelt key, with the nearest known', 'equipment.yaml', 'status: fitted', 'staus: fitted',
    ['equipment.yaml:24:5 SCH101 ⟨staus⟩'], 'there is no key "staus"; did you mean "status"?'),
  change('a misspelt key in a map inside', 'circuits.yaml', '{type: "class T fuse", rating: 100 A}', '{type: "class T fuse", rating: 100 A, note: new}',
    ['circuits.yaml:5:55 SCH101 ⟨note⟩']),
  change('a key whose name is special to the language this is written in', 'equipment.yaml', 'status: fitted', '__proto__: {a: 1}',
    ['equipment.yaml:24:5 SCH101 ⟨__proto__⟩']),
  change('a column that no kind knows: one finding for all rows', 'cables.csv', 'to,type', 'to,typ',
    ['cables.csv:1:13 SCH101 ⟨typ⟩']),
  change('an identifier written as a number', 'vessel.yaml', '"002320001"', '002320001',
    ['vessel.yaml:5:9 SCH102 ⟨002320001⟩'], '"mmsi" is 002320001, expected nine digits, in quotes so that no zero is lost'),
  change('a tag with a space', 'equipment.yaml', 'tag: X9', 'tag: X 9', [
    'cables.csv:6:5 REF103 ⟨X9⟩', 'cables.csv:6:8 REF103 ⟨X9⟩', 'equipment.yaml:31:10 SCH102 ⟨X 9⟩',
  ]),
  change('a tag that YAML takes for a number', 'equipment.yaml', 'tag: X9', 'tag: 1e3', [
    'cables.csv:6:5 REF103 ⟨X9⟩', 'cables.csv:6:8 REF103 ⟨X9⟩', 'equipment.yaml:31:10 SCH102 ⟨1e3⟩',
  ]),
  change('a range', 'circuits.yaml', 'demand-factor: 0.6', 'demand-factor: 60', ['circuits.yaml:13:20 SCH102 ⟨60⟩'],
    '"demand-factor" is 60, expected a number from 0 to 1'),
  change('a date that does not exist', 'vessel.yaml', 'issued-on: 2026-05-04', 'issued-on: 2026-02-30', ['vessel.yaml:12:16 SCH102 ⟨2026-02-30⟩']),
  change('two lengths where three belong', 'equipment.yaml', '[4.10 m, -0.35 m, 6 ft]', '[4.10 m, 6 ft]', ['equipment.yaml:22:15 SCH102 ⟨[4.10 m, 6 ft]⟩']),
  change('an entry that is no map', 'vessel.yaml', '- {tag: J1, name: Behind the helm, zone: helm}', '- J1', ['vessel.yaml:28:5 SCH102 ⟨J1⟩']),
  change('a backbone element of two kinds', 'circuits.yaml', '{power: T2, circuit: A1.1}', '{power: T2, segment: W11}',
    ['circuits.yaml:30:9 SCH102 ⟨{power: T2, segment: W11}⟩'], 'expected exactly one of: terminator, segment, tee, power'),
  change('one faulty word of a list', 'circuits.yaml', 'loads: P1 K1', 'loads: P1 K1 ?!', ['circuits.yaml:22:18 SCH102 ⟨?!⟩']),
  change('a file outside the folder', 'equipment.yaml', './docs/p1.pdf', '../p1.pdf', ['equipment.yaml:26:16 SCH102 ⟨../p1.pdf⟩']),
  change('a word that is in no list, with the nearest', 'vessel.yaml', 'space: cockpit', 'space: cokpit',
    ['vessel.yaml:24:36 SCH103 ⟨cokpit⟩'], '"space" is cokpit; did you mean "cockpit"?'),
  change('a number without unit', 'vessel.yaml', 'cable-tail: 40 cm', 'cable-tail: 0.4', ['vessel.yaml:15:17 SCH104 ⟨0.4⟩'],
    '"conditions.cable-tail" is 0.4, expected a length with its unit (m, cm, mm, ft or in), for example "6.4 m"'),
  change('a unit of another kind', 'equipment.yaml', 'current-max: 1.5 A', 'current-max: 1.5 W', ['equipment.yaml:23:18 SCH104 ⟨1.5 W⟩'],
    'expected a current with its unit (A, mA or kA)'),
  change('a decimal comma', 'equipment.yaml', 'current-max: 1.5 A', 'current-max: 1,5 A', ['equipment.yaml:23:18 SCH104 ⟨1,5 A⟩'],
    'expected a decimal point: "1.5 A"'),
  change('a faulty cell of a table', 'cables.csv', 'can,,2 m,', 'can,,2,', ['cables.csv:4:16 SCH104 ⟨2⟩']),
  change('a faulty value reached through an alias', 'equipment.yaml', 'supply-min: 9 V\n    supply-max: 32 V', 'supply-min: &v 9 W\n    supply-max: *v', [
    'equipment.yaml:6:20 SCH104 ⟨9 W⟩', 'equipment.yaml:6:20 SCH104 ⟨9 W⟩',
  ]),
  change('a missing key', 'vessel.yaml', '  - tag: nav\n    name: Navigation', '  - tag: nav', ['vessel.yaml:21:5 SCH201 ⟨tag⟩'],
    'System nav: "name" is missing'),
  change('a required key without a value', 'vessel.yaml', 'name: Navigation', 'name:', ['vessel.yaml:22:5 SCH201 ⟨name⟩']),
  change('an optional key without a value counts as left out', 'equipment.yaml', 'status: fitted', 'status:', []),
  change('a missing key of a row', 'cables.csv', 'W12,X9,X9', 'W12,X9,', ['cables.csv:6:1 SCH201 ⟨W12⟩']),
  change('an entry without its tag', 'equipment.yaml', '- tag: X9\n    name: Spare connector', '- name: Spare connector', [
    'cables.csv:6:5 REF103 ⟨X9⟩', 'cables.csv:6:8 REF103 ⟨X9⟩', 'equipment.yaml:31:5 SCH201 ⟨name⟩',
  ]),
  change('a missing key of a map inside', 'circuits.yaml', '{type: "class T fuse", rating: 100 A}', '{type: "class T fuse"}',
    ['circuits.yaml:5:18 SCH201 ⟨type⟩'], 'Circuit F1: "protection.rating" is missing'),
  change('a protective device is not guessed', 'circuits.yaml', '{type: "class T fuse", rating: 100 A}', '{type: "class S fuse", rating: 100 A}',
    ['circuits.yaml:5:24 SCH103 ⟨"class S fuse"⟩'], 'Circuit F1: "protection.type" is "class S fuse"'),
  change('a rating of nothing', 'circuits.yaml', '{type: "class T fuse", rating: 100 A}', '{type: "class T fuse", rating: 0 A}',
    ['circuits.yaml:5:48 SCH104 ⟨0 A⟩']),
  change('protection and the reason for none', 'circuits.yaml', '{type: "class T fuse", rating: 100 A}', '{type: "class T fuse", rating: 100 A}\n    unprotected: engine starting',
    ['circuits.yaml:6:18 SCH102 ⟨engine starting⟩']),
  { name: 'no vessel', files: without('vessel.yaml'), findings: [
    '⟨⟩ SCH202',
    'cables.csv:3:19 REF103 ⟨WW2⟩', 'cables.csv:3:23 REF103 ⟨WW1⟩',
    'circuits.yaml:7:11 REF103 ⟨engine-space⟩', 'circuits.yaml:27:32 REF103 ⟨helm⟩', 'circuits.yaml:29:25 REF103 ⟨helm⟩',
    'equipment.yaml:19:11 REF103 ⟨helm⟩', 'equipment.yaml:20:13 REF103 ⟨nav⟩', 'equipment.yaml:21:12 REF103 ⟨J1⟩',
    'equipment.yaml:30:11 REF103 ⟨helm⟩', 'equipment.yaml:36:11 REF103 ⟨engine-space⟩',
    'equipment.yaml:41:44 REF103 ⟨engine-space⟩', 'equipment.yaml:46:11 REF103 ⟨helm⟩',
  ] },
  change('a zone box without width, its corners in any order', 'vessel.yaml', '{tag: helm, name: Helm, space: cockpit}',
    '{tag: helm, name: Helm, space: cockpit, from: "3 m, 1 m, 1 m", to: "2 m, -1 m, 0 m"}\n  - {tag: aft, name: Aft, space: deck, from: "3 m, 1 m, 1 m", to: "2 m, 1 m, 0 m"}',
    ['vessel.yaml:25:67 SCH102 ⟨"2 m, 1 m, 0 m"⟩'], 'a box without length or width is on no plan'),
  change('a word of the list that asks for more', 'vessel.yaml', 'systems:', 'manual-contents:\n  - {content: handling, state: elsewhere}\nsystems:',
    ['vessel.yaml:21:32 SCH102 ⟨elsewhere⟩'], 'expected with "elsewhere" the document under "where"'),
  { name: 'a drawing whose corners are the wrong way round', files: { ...smallVessel, 'docs/plan.png': '', 'drawings.yaml': `arrangement-drawings:
  - {file: docs/plan.png, view: plan, from: '8 m, 1 m, 0 m', to: '0 m, -1 m, 0 m'}
  - {file: docs/plan.png, view: profile, from: '0 m, 0 m, -1 m', to: '8 m, 0 m, 2 m'}
  - {file: docs/plan.png, view: plan, from: '0 m, 0 m, -1 m', to: '8 m, 0 m, 2 m'}\n` },
  findings: ['drawings.yaml:2:66 SCH102 ⟨\'0 m, -1 m, 0 m\'⟩', 'drawings.yaml:4:67 SCH102 ⟨\'8 m, 0 m, 2 m\'⟩'], says: 'forward of the lower left one' },
  { name: 'a call-out beside its photograph', files: { ...smallVessel, 'docs/a.jpg': '', 'pictures.yaml': "photographs:\n  - {file: docs/a.jpg, caption: The helm, call-outs: [{at: '130 %, 55 %', item: P1}, {at: '0 %, 100 %', item: P1}]}\n" },
    findings: ['pictures.yaml:2:60 SCH104 ⟨\'130 %, 55 %\'⟩'], says: 'expected a percentage from 0 to 100 %' },
  { name: 'a long list of words is told by those that are like', files: { ...smallVessel, 'absences.csv': 'what,reason\nfixed vhf radio,none\n' },
    findings: ['absences.csv:2:1 SCH103 ⟨fixed vhf radio⟩'] },
  { name: 'two vessels', files: { ...smallVessel, 'zz.yaml': 'vessel:\n  name: Plover\n  basis: abyc\n' }, findings: ['zz.yaml:2:3 SCH105 ⟨name⟩'],
    says: 'the first is at vessel.yaml:2:3' },
]

export const referenceCases: readonly Case[] = [
  change('one tag twice, whatever it names', 'equipment.yaml', 'tag: X9', 'tag: W1', [
    'cables.csv:2:1 REF101 ⟨W1⟩', 'cables.csv:6:5 REF103 ⟨X9⟩', 'cables.csv:6:8 REF103 ⟨X9⟩',
  ], 'Cable W1: this tag is already taken by equipment W1 at equipment.yaml:31:10'),
  change('one model twice', 'equipment.yaml', '      - {name: net, kind: ethernet, speed: 1 Gbit/s, power-class: 3}', '      - {name: net, kind: ethernet}\n  - {model: brook-7, title: Again}',
    ['equipment.yaml:15:13 REF101 ⟨brook-7⟩']),
  change('tags that differ in capitals only', 'equipment.yaml', '- tag: X9\n    name: Spare connector', '- tag: X9\n    name: Spare connector\n  - {tag: p1, name: Other}',
    ['equipment.yaml:33:11 REF102 ⟨p1⟩'], 'both would have the page address "p1"'),
  change('tags that differ in signs only', 'equipment.yaml', '- tag: X9\n    name: Spare connector', '- tag: X9\n    name: Spare connector\n  - {tag: engine_space, name: Other}',
    ['equipment.yaml:33:11 REF102 ⟨engine_space⟩']),
  { name: 'a repeated tag is no fault of those who refer to it', files: { 'aa.yaml': 'equipment:\n  - {tag: X1, name: Junction}\n', ...smallVessel },
    findings: ['equipment.yaml:41:11 REF101 ⟨X1⟩'] },
  change('a tee that is also listed as equipment is one thing', 'equipment.yaml', '- tag: X9\n    name: Spare connector', '- tag: X9\n    name: Spare connector\n  - {tag: T1, name: Tee, kind: can bus tee}', []),
  change('a tee with the tag of another thing', 'equipment.yaml', '- tag: X9\n    name: Spare connector', '- tag: X9\n    name: Spare connector\n  - {tag: T1, name: Light, kind: light}',
    ['circuits.yaml:29:15 REF101 ⟨T1⟩']),
  change('an unknown zone, with the nearest', 'equipment.yaml', 'zone: helm\n    system: nav', 'zone: hlem\n    system: nav', ['equipment.yaml:19:11 REF103 ⟨hlem⟩'], '"zone" names hlem, which is not in the folder; did you mean "helm"?'),
  change('an unknown model, with the nearest', 'equipment.yaml', 'model: brook-7\n    zone', 'model: brook7\n    zone', ['equipment.yaml:18:12 REF103 ⟨brook7⟩'], 'did you mean "brook-7"?'),
  change('an unknown word in a list', 'circuits.yaml', 'loads: P1 K1', 'loads: P1 K7', ['circuits.yaml:22:15 REF103 ⟨K7⟩'], 'Circuit A1.1: "loads" names K7, which is not in the folder'),
  change('an unknown end of a cable', 'cables.csv', 'W11,T1,P1', 'W11,T3,P1', ['cables.csv:5:5 REF103 ⟨T3⟩']),
  change('an unknown wireway in a route', 'cables.csv', 'WW2 WW1', 'WW2 WW7', ['cables.csv:3:23 REF103 ⟨WW7⟩']),
  change('an unknown cable of a backbone', 'circuits.yaml', '{segment: W10}', '{segment: W99}', ['circuits.yaml:28:19 REF103 ⟨W99⟩']),
  change('a circuit fed from a load', 'circuits.yaml', 'fed-from: X1', 'fed-from: P1', ['circuits.yaml:10:15 REF104 ⟨P1⟩'],
    '"fed-from" names P1 (equipment), expected a battery, busbar or panel'),
  change('a cable to a zone', 'cables.csv', 'X9,X9', 'X9,helm', ['cables.csv:6:8 REF104 ⟨helm⟩']),
  change('a file that is not there', 'equipment.yaml', './docs/p1.pdf', 'docs/p2.pdf', ['equipment.yaml:26:16 REF105 ⟨docs/p2.pdf⟩'], 'did you mean "docs/p1.pdf"?'),
  { name: 'a picture that is not there', files: { ...smallVessel, 'pictures.yaml': 'photographs:\n  - {file: docs/p2.pdf, caption: The helm}\n' },
    findings: ['pictures.yaml:2:12 REF201 ⟨docs/p2.pdf⟩'], says: 'Photograph docs/p2.pdf: there is no file docs/p2.pdf in the folder; did you mean "docs/p1.pdf"?' },
  change('a circuit that feeds its source', 'circuits.yaml', 'loads: A1', 'loads: A1 X1', ['circuits.yaml:12:15 REF106 ⟨X1⟩']),
  change('a way taken twice', 'circuits.yaml', 'can-buses:', '  - {tag: A1.2, name: Other, fed-from: A1, way: 1}\ncan-buses:', ['circuits.yaml:23:49 REF107 ⟨1⟩'],
    'way 1 of panel A1 is already taken by circuit A1.1 at circuits.yaml:14:10'),
  change('a way that the panel does not have', 'circuits.yaml', 'way: 1', 'way: 7', ['circuits.yaml:17:10 REF108 ⟨7⟩'], 'way 7 of panel A1, which has 6'),
  change('a switch that is none', 'circuits.yaml', 'switches: [K1]', 'switches: [K1, P1]', ['circuits.yaml:33:45 REF109 ⟨P1⟩'], 'P1 is of the kind "display"'),
  {
    name: 'two procedures in one place', files: { ...smallVessel, 'procedures/a.md': '---\ntitle: A\nplace: fire\n---\nText.\n', 'procedures/b.md': '---\ntitle: B\nplace: fire\n---\nText.\n' },
    findings: ['procedures/b.md:3:8 REF110 ⟨fire⟩'], says: 'Procedure B: the page "fire" already shows the procedure "A" at procedures/a.md:2:8',
  },
  {
    name: 'an unknown tag in the text of a procedure, with the nearest', files: { ...smallVessel, 'procedures/a.md': '---\ntitle: A\n---\nLeave `[[P7]]`,\nthen see [[hlem]].\n' },
    findings: ['procedures/a.md:5:12 REF103 ⟨hlem⟩'], says: 'Procedure A: "text" names hlem, which is not in the folder; did you mean "helm"?',
  },
  {
    name: 'a picture and a link to a file in the text of a procedure', files: { ...smallVessel, 'procedures/a.md': '---\ntitle: A\n---\n![Helm](docs/a.jpg), `[x](y)`,\n[here](docs/p1.pdf) and [there](https://host.invalid).\n' },
    findings: ['procedures/a.md:4:9 REF202 ⟨docs/a.jpg⟩', 'procedures/a.md:5:8 REF202 ⟨docs/p1.pdf⟩'], says: 'Procedure A: "text" holds the picture docs/a.jpg, and the pack shows its words alone',
  },
  { name: 'a tag in notes, in a folded text', files: changed(smallVessel, 'equipment.yaml', '    status: fitted', '    status: fitted\n    notes: >-\n      Fed from [[A1.1]],\n      not from [[A1.9]].'), findings: ['equipment.yaml:27:18 REF103 ⟨A1.9⟩'] },
  change('a terminal that the model does not have', 'cables.csv', 'P1:power', 'P1:powr', ['cables.csv:2:9 REF301 ⟨P1:powr⟩'], 'terminal "powr", which P1 does not have; did you mean "power"?'),
]

export const hidingCases: readonly Case[] = [
  { name: 'an entry at fault hides no fault of another, and is not missed', files: changed(changed(smallVessel,
    'equipment.yaml', 'name: House battery', 'naem: House battery'), 'circuits.yaml', 'loads: [X1]', 'loads: [X2]'), findings: [
    'circuits.yaml:6:13 REF103 ⟨X2⟩', 'equipment.yaml:34:5 SCH201 ⟨tag⟩', 'equipment.yaml:35:5 SCH101 ⟨naem⟩',
  ] },
  { name: 'what a broken file may hold is not missed, what it cannot hold is', files: changed(changed(smallVessel,
    'equipment.yaml', 'name: House battery', 'name: "House battery'), 'cables.csv', 'W12,X9,X9', 'W12,X9,X8'), findings: [
    'cables.csv:6:8 REF103 ⟨X8⟩', 'equipment.yaml:35:11 SRC111 ⟨"House battery⟩',
  ] },
  { name: 'what a dropped row names is not missed', files: changed(changed(smallVessel, 'cables.csv', 'W10,R1,T1,can,,2 m,', 'W10,R1,T1,can,,2 m'),
    'circuits.yaml', 'drop: W11', 'drop: W77'), findings: [
    'cables.csv:4:1 SRC124 ⟨W10,R1,T1,can,,2 m⟩', 'circuits.yaml:29:49 REF103 ⟨W77⟩',
  ] },
]
