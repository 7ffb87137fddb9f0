/**
 * Folders that no one should hand in, each made afresh in a temporary folder, since links, wrong encodings and huge files
 * do not keep well in a repository. The findings are the whole list that reading and checking must bring.
 */
import { execFileSync } from 'node:child_process'
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

export interface HostileCase {
  readonly name: string
  /** Fills the vessel folder; `outside` is another folder beside it. */
  readonly make: (folder: string, outside: string) => void
  /** Path to read instead of the folder. */
  readonly path?: (folder: string) => string
  readonly catalogue?: (folder: string, outside: string) => string
  /** As `listed` writes them; FOLDER stands for the path that was read. */
  readonly findings: readonly string[]
  readonly says?: string
  /** 2: could not be read as a vessel; 1: read, with errors; 0: nothing to object to. */
  readonly exit: 0 | 1 | 2
}

const vessel = 'vessel: {name: Tern, basis: iso}\n'
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, character => character.charCodeAt(0))

type Content = string | Uint8Array
const write = (files: Readonly<Record<string, Content>>) => (folder: string): void => {
  for (const [name, content] of Object.entries(files)) {
    const path = join(folder, name)
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, content)
  }
}
/** A case of one file beside a sound vessel.yaml. */
const withFile = (name: string, file: string, content: Content, findings: readonly string[], exit: 0 | 1 | 2, says?: string): HostileCase =>
  ({ name, make: write({ 'vessel.yaml': vessel, [file]: content }), findings, exit, ...(says === undefined ? {} : { says }) })

const bomb = `equipment:
  - &a {tag: P1, name: x, ports: [1, 1, 1, 1, 1, 1, 1, 1, 1]}
  - &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]
  - &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]
  - &d [*c, *c, *c, *c, *c, *c, *c, *c, *c]
  - &e [*d, *d, *d, *d, *d, *d, *d, *d, *d]
  - &f [*e, *e, *e, *e, *e, *e, *e, *e, *e]
`

export const folderCases: readonly HostileCase[] = [
  { name: 'a path with nothing there', make: () => {}, path: folder => join(folder, 'nowhere'), findings: ['⟨FOLDER⟩ SRC101'], exit: 2 },
  { name: 'a file in place of the folder', make: write({ 'vessel.yaml': vessel }), path: folder => join(folder, 'vessel.yaml'), findings: ['⟨FOLDER⟩ SRC101'], exit: 2, says: 'a file, not a folder' },
  { name: 'an empty folder', make: () => {}, findings: ['⟨FOLDER⟩ SRC201'], exit: 2 },
  { name: 'a folder without data', make: write({ 'readme.txt': 'hello', '.hidden.yaml': vessel, 'node_modules/a.yaml': vessel }), findings: ['⟨FOLDER⟩ SRC201'], exit: 2 },
  { name: 'data of no vessel', make: write({ 'zones.yaml': 'zones: []\n' }), findings: ['⟨⟩ SCH202'], exit: 1 },
  { name: 'hidden files and those of package managers are passed over', make: write({ 'vessel.yaml': vessel, '.old/a.yaml': '{', 'node_modules/a/b.yaml': '{' }), findings: [], exit: 0 },
  { name: 'files deep down are read', make: write({ 'a/b/c/d/e/vessel.yaml': vessel, 'a/zones.YML': 'zones: [{tag: helm}]' }), findings: ['a/zones.YML:1:10 SCH201 ⟨tag⟩', 'a/zones.YML:1:10 SCH201 ⟨tag⟩'], exit: 1 },
  {
    name: 'links inside the folder: each file is read once', findings: [], exit: 0,
    make: folder => {
      write({ 'vessel.yaml': vessel, 'electrical/zones.yaml': 'zones: [{tag: helm, name: Helm, space: interior}]' })(folder)
      symlinkSync(join(folder, 'electrical'), join(folder, 'again'))
      symlinkSync(join(folder, 'electrical', 'zones.yaml'), join(folder, 'a.yaml'))
    },
  },
  {
    name: 'links in a circle', findings: [], exit: 0,
    make: folder => {
      write({ 'vessel.yaml': vessel, 'a/b/c.txt': '' })(folder)
      symlinkSync(folder, join(folder, 'a', 'b', 'up'))
      symlinkSync(join(folder, 'a'), join(folder, 'a', 'b', 'round'))
    },
  },
  {
    name: 'links out of the folder, of a file and of a folder', findings: ['⟨a.yaml⟩ SRC105', '⟨more⟩ SRC105'], exit: 2,
    make: (folder, outside) => {
      write({ 'vessel.yaml': vessel })(folder)
      write({ 'secret.yaml': 'zones: [{tag: secret}]' })(outside)
      symlinkSync(join(outside, 'secret.yaml'), join(folder, 'a.yaml'))
      symlinkSync(outside, join(folder, 'more'))
    },
  },
  {
    name: 'links to nowhere and to themselves', findings: ['⟨a.yaml⟩ SRC102', '⟨b.yaml⟩ SRC102'], exit: 2,
    make: folder => {
      write({ 'vessel.yaml': vessel })(folder)
      symlinkSync(join(folder, 'gone.yaml'), join(folder, 'a.yaml'))
      symlinkSync(join(folder, 'b.yaml'), join(folder, 'b.yaml'))
    },
  },
  {
    name: 'a folder that is named like a file', findings: [], exit: 0,
    make: folder => {
      write({ 'vessel.yaml': vessel, 'zones.yaml/readme.txt': '' })(folder)
    },
  },
  {
    name: 'a pipe in place of a file, which would be waited for', findings: ['⟨zones.yaml⟩ SRC102'], exit: 2,
    make: folder => {
      write({ 'vessel.yaml': vessel })(folder)
      execFileSync('mkfifo', [join(folder, 'zones.yaml')])
    },
  },
  withFile('a file that is too large', 'big.yaml', `#${'x'.repeat(8 * 1024 * 1024)}`, ['⟨big.yaml⟩ SRC103'], 2),
  withFile('a file that is not UTF-8', 'zones.yaml', latin1('zones:\n  - {tag: é, name: x, space: deck}\n'), ['zones.yaml:2:11 SRC104 ⟨\uFFFD⟩'], 2, 'byte 18 belongs to no character'),
  withFile('a character cut off at the end of a file', 'zones.yaml', latin1('zones: # \u00C3'), ['zones.yaml:1:10 SRC104 ⟨\uFFFD⟩'], 2),
  withFile('a file of UTF-16', 'zones.yaml', Uint8Array.from([0xFF, 0xFE, 0x7A, 0, 0x6F, 0]), ['zones.yaml:1:1 SRC104 ⟨\uFFFD⟩'], 2),
  withFile('a procedure that is not UTF-8', 'procedures/wash.md', latin1('---\ntitle: Wash\n---\nAt 20 \u00B0C.\n'), ['procedures/wash.md:4:7 SRC104 ⟨\uFFFD⟩'], 2, 'byte 27 belongs to no character'),
  withFile('a procedure whose front matter is not YAML', 'procedures/wash.md', '---\ntitle: Wash: down\n---\nText.\n', ['procedures/wash.md:2:8 SRC111 ⟨W⟩'], 2),
  withFile('a procedure whose front matter is a list', 'procedures/wash.md', '---\n- Wash\n---\nText.\n', ['procedures/wash.md:2:1 SRC115 ⟨-⟩'], 2, 'keys and values between the lines of ---'),
  withFile('a procedure with its text twice', 'procedures/wash.md', '---\ntitle: Wash\ntext: Down\n---\nText.\n', ['procedures/wash.md:3:1 SRC112 ⟨text⟩'], 2, 'procedures/wash.md:5:1, below the front matter'),
  withFile('a procedure with Windows line ends and a byte order mark', 'procedures/wash.md', '\uFEFF---\r\ntitle: Wash\r\nplace: deck\r\n---\r\nText, [[X9]].\r\n', ['procedures/wash.md:3:8 SCH103 ⟨deck⟩', 'procedures/wash.md:5:9 REF103 ⟨X9⟩'], 1),
  withFile('a procedure without front matter', 'procedures/wash.md', '\nText.\n', ['procedures/wash.md:1:1 SRC118 ⟨⟩'], 1),
  withFile('a procedure of nothing but front matter', 'procedures/wash.md', '---\ntitle: Wash\n---', ['procedures/wash.md:3:1 SRC119 ⟨---⟩'], 1),
  withFile('a procedure whose front matter is empty', 'procedures/wash.md', '---\n---\nText.\n', ['procedures/wash.md:3:1 SCH201 ⟨T⟩'], 1),
  withFile('a procedure with names of the language, markup and brackets that are never closed', 'procedures/wash.md',
    '---\ntitle: "Wash\\n<b> {{ x }} ]]> =1+1"\n---\n[[constructor]] [[__proto__]] <script>x</script> [a](javascript:b) ![c](http://d) [[\n', [
      'procedures/wash.md:4:3 REF103 ⟨constructor⟩', 'procedures/wash.md:4:19 REF103 ⟨__proto__⟩', 'procedures/wash.md:4:54 REF202 ⟨javascript:b⟩', 'procedures/wash.md:4:73 REF202 ⟨http://d⟩',
    ], 1),
  withFile('a procedure of 5 MB', 'procedures/wash.md', `---\ntitle: Wash\n---\n${'Wash `[[X1]]` and *rinse* [here](https://host.invalid) \n\n'.repeat(90_000)}[[X9]]`, ['procedures/wash.md:180004:3 REF103 ⟨X9⟩'], 1),
  withFile('a Markdown file that is in no folder of procedures', 'notes/procedures/wash.md', 'Text.', [], 0),
  withFile('a byte order mark', 'zones.yaml', '\uFEFFzones: [{tag: helm}]', ['zones.yaml:1:10 SCH201 ⟨tag⟩', 'zones.yaml:1:10 SCH201 ⟨tag⟩'], 1),
  withFile('Windows line ends', 'zones.yaml', 'zones:\r\n  - tag: helm\r\n    name: Helm\r\n    space: hold\r\n', ['zones.yaml:4:12 SCH103 ⟨hold⟩'], 1),
  {
    name: 'a catalogue with things of one vessel', exit: 1,
    make: (folder, outside) => {
      write({ 'vessel.yaml': vessel })(folder)
      write({ 'models.yaml': 'models: [{model: m1, title: M1}]\nzones: [{tag: helm}]\n', 'cables.csv': 'tag,from,to\n' })(outside)
    },
    catalogue: (_folder, outside) => outside,
    findings: ['⟨../outside/cables.csv⟩ SRC117', '../outside/models.yaml:2:1 SRC117 ⟨zones⟩'],
  },
  {
    name: 'a catalogue that is not there hides no fault but those it may explain', exit: 2,
    make: write({ 'vessel.yaml': vessel, 'a.yaml': 'equipment: [{tag: P1, name: x, model: m1, zone: helm, serail: 1}]' }),
    catalogue: folder => join(folder, '..', 'nowhere'),
    findings: ['⟨CATALOGUE⟩ SRC101', 'a.yaml:1:55 SCH101 ⟨serail⟩'],
  },
  {
    name: 'a catalogue inside the vessel folder is read once', exit: 0,
    make: write({ 'vessel.yaml': vessel, 'catalogue/models.yaml': 'models: [{model: m1, title: M1}]' }),
    catalogue: folder => join(folder, 'catalogue'),
    findings: [],
  },
]

export const yamlCases: readonly HostileCase[] = [
  withFile('several syntax errors', 'zones.yaml', 'zones:\n  - {tag: @helm}\n  - {tag: `deck`}\n', ['zones.yaml:2:11 SRC111 ⟨@⟩', 'zones.yaml:3:11 SRC111 ⟨`⟩'], 2),
  withFile('a tab as indentation', 'zones.yaml', 'zones:\n\t- tag: helm\n', ['zones.yaml:2:1 SRC111 ⟨\t⟩'], 2),
  withFile('two documents', 'zones.yaml', 'zones: []\n---\nzones: []\n', ['zones.yaml:2:1 SRC111 ⟨---⟩'], 2, 'begins a second document'),
  withFile('a second colon', 'zones.yaml', 'zones:\n  - tag: helm: deck\n', ['zones.yaml:2:10 SRC111 ⟨h⟩'], 2, 'a second ": " in one line'),
  withFile('a quotation mark that is never closed', 'zones.yaml', 'zones:\n  - tag: helm\n    name: "Helm\n  - tag: deck\n', ['zones.yaml:3:11 SRC111 ⟨"Helm⟩'], 2),
  withFile('a word with an exclamation mark', 'zones.yaml', 'zones: [{tag: !helm x}]\n', ['zones.yaml:1:15 SRC111 ⟨!helm⟩'], 2),
  withFile('rules of an older YAML, chosen by the file', 'zones.yaml', '%YAML 1.1\n---\nzones: [{tag: yes, name: Yes, space: deck}, {tag: 1_0, name: Ten, space: deck}]\n', [], 0),
  withFile('a list as a key', 'zones.yaml', '? [a]\n: 1\n', ['zones.yaml:1:3 SRC111 ⟨[⟩'], 2),
  withFile('a key that stands twice', 'zones.yaml', 'zones:\n  - tag: helm\n    name: Helm\n    space: deck\n    name: Deck\n', ['zones.yaml:5:5 SRC112 ⟨name⟩'], 2, 'the first is at zones.yaml:3:5'),
  withFile('an alias without anchor', 'zones.yaml', 'zones: [{tag: helm, name: *n, space: deck}]\n', ['zones.yaml:1:27 SRC113 ⟨*n⟩'], 2),
  withFile('an alias inside what it refers to', 'zones.yaml', 'zones: &z [{tag: helm, name: Helm, space: deck}, *z]\n', ['zones.yaml:1:50 SRC113 ⟨*z⟩'], 2),
  withFile('an alias that is fine', 'zones.yaml', 'zones:\n  - {tag: helm, name: &n Helm, space: deck}\n  - {tag: hold, name: *n, space: bilge}\n', [], 0),
  {
    name: 'aliases that multiply beyond measure', make: write({ 'vessel.yaml': vessel, 'a.yaml': bomb }), exit: 2,
    findings: ['a.yaml:7:9 SRC113 ⟨*e⟩'], says: 'brings the values that aliases repeat in this file above 100000',
  },
  withFile('a hundred thousand brackets', 'zones.yaml', `zones: ${'['.repeat(100_000)}`, ['⟨zones.yaml⟩ SRC114'], 2),
  withFile('lists in lists', 'zones.yaml', `zones: ${'['.repeat(100)}${']'.repeat(100)}\n`, [`zones.yaml:1:72 SRC114 ⟨${'['.repeat(36)}${']'.repeat(36)}⟩`], 2),
  withFile('a list at the top', 'zones.yaml', '- tag: helm\n', ['zones.yaml:1:1 SRC115 ⟨-⟩'], 2),
  withFile('a word at the top', 'zones.yaml', 'helm\n', ['zones.yaml:1:1 SRC115 ⟨h⟩'], 2),
  withFile('a kind that holds no list', 'zones.yaml', 'zones: {tag: helm}\n', ['zones.yaml:1:1 SRC115 ⟨zones⟩'], 2),
  { name: 'a vessel that is a list', make: write({ 'vessel.yaml': 'vessel: [{name: Tern}]\n' }), findings: ['vessel.yaml:1:1 SRC115 ⟨vessel⟩'], exit: 2 },
  withFile('a kind with nothing below it yet', 'zones.yaml', 'zones:\n', [], 0),
  withFile('a file of comments', 'zones.yaml', '# later\n', [], 0),
  withFile('an empty file', 'zones.yaml', '', [], 0),
  withFile('an unknown kind, with the nearest', 'zones.yaml', 'zone:\n  - tag: helm\n', ['zones.yaml:1:1 SRC116 ⟨zone⟩'], 1, '"zone" is no kind of entry; did you mean "zones"?'),
  withFile('a key that reaches for the prototype', 'zones.yaml', '__proto__: {polluted: true}\nconstructor: 1\n', ['zones.yaml:1:1 SRC116 ⟨__proto__⟩', 'zones.yaml:2:1 SRC116 ⟨constructor⟩'], 1),
]

const zonesHeader = 'tag,name,space\n'
export const csvCases: readonly HostileCase[] = [
  withFile('a name that names no kind, with the nearest', 'zone-list.csv', zonesHeader, ['⟨zone-list.csv⟩ SRC121'], 1, 'did you mean "zones"?'),
  {
    name: 'a table that an item lists as a document is no data', exit: 0, findings: [],
    make: write({ 'vessel.yaml': vessel, 'log.csv': 'a;b\n"', 'e.yaml': 'equipment: [{tag: P1, name: x, documents: [{file: log.csv, title: Log}]}]' }),
  },
  {
    name: 'a table that is a document makes up for no entry', exit: 1, findings: ['e.yaml:1:38 REF103 ⟨Z9⟩'],
    make: write({ 'vessel.yaml': vessel, 'log.csv': 'Z9', 'e.yaml': 'equipment: [{tag: P1, name: x, zone: Z9, documents: [{file: log.csv, title: Log}]}]' }),
  },
  withFile('a name with an addition', 'zones-aft.csv', `${zonesHeader}aft,Aft,hold\n`, ['zones-aft.csv:2:9 SCH103 ⟨hold⟩'], 1),
  withFile('ragged rows', 'zones.csv', `${zonesHeader}helm,Helm\n\nfore,Fore,deck,x\naft,Aft,hold\nmid,Mid,deck,,\n`, [
    'zones.csv:2:1 SRC124 ⟨helm,Helm⟩', 'zones.csv:4:1 SRC124 ⟨fore,Fore,deck,x⟩', 'zones.csv:5:9 SCH103 ⟨hold⟩',
  ], 2, 'This row has 2 cells, the header has 3'),
  withFile('a column without a name', 'zones.csv', 'tag,,space\nhelm,Helm,deck\n', ['zones.csv:1:5 SRC123 ⟨⟩'], 2, 'Column 2 has values but no name'),
  withFile('empty columns at the right, empty rows at the end', 'zones.csv', 'tag,name,space,,\nhelm,Helm,hold,,\n,,,,\n', ['zones.csv:2:11 SCH103 ⟨hold⟩'], 1),
  withFile('a column that stands twice', 'zones.csv', 'tag,name,space,name\nhelm,Helm,deck,x\n', ['zones.csv:1:16 SRC123 ⟨name⟩'], 2),
  withFile('a column that is part of another', 'circuits.csv', 'tag,name,fed-from,protection,protection.type\nF1,x,G1,a,b\n', ['circuits.csv:1:30 SRC123 ⟨protection.type⟩'], 2),
  withFile('a column with an empty part', 'circuits.csv', 'tag,name,fed-from,protection.\nF1,x,G1,a\n', ['circuits.csv:1:19 SRC123 ⟨protection.⟩'], 2),
  withFile('nested columns', 'circuits.csv', 'tag,name,fed-from,protection.type,protection.rating\nF1,x,G1,blade fuse,10\n', [
    'circuits.csv:2:6 REF103 ⟨G1⟩', 'circuits.csv:2:20 SCH104 ⟨10⟩',
  ], 1),
  withFile('semicolons, a byte order mark, Windows line ends', 'zones.csv', '\uFEFFtag;name;space\r\nhelm;"Helm; aft";hold\r\n', ['zones.csv:2:18 SCH103 ⟨hold⟩'], 1),
  withFile('tabs', 'zones.csv', 'tag\tname\tspace\nhelm\tHelm, aft\thold\n', ['zones.csv:2:16 SCH103 ⟨hold⟩'], 1),
  withFile('comments, one of them put in quotes by a spreadsheet', 'zones.csv', '# zones, all\n"# more, of it"\ntag;name;space\n# it\'s "here"\nhelm;Helm;hold\n', ['zones.csv:5:11 SCH103 ⟨hold⟩'], 1),
  withFile('letters beyond ASCII before the fault', 'zones.csv', `${zonesHeader}helm, "Führerhaus ⛵ 𝄞" ,  hold \n`, ['zones.csv:2:28 SCH103 ⟨hold⟩'], 1),
  withFile('a line end inside a cell', 'zones.csv', `${zonesHeader}helm,"Helm\naft",hold\n`, ['zones.csv:3:6 SCH103 ⟨hold⟩'], 1),
  withFile('a quotation mark that is never closed', 'zones.csv', `${zonesHeader}helm,"Helm,deck\naft,Aft,hold\n`, ['zones.csv:2:6 SRC122 ⟨"Helm,deck⟩'], 2),
  withFile('a quotation mark inside a cell', 'zones.csv', `${zonesHeader}helm,16" Helm,deck\n`, ['zones.csv:2:6 SRC122 ⟨16" Helm,deck⟩'], 2),
  withFile('call-outs in a table, which holds no lists of keys and values', 'photographs.csv', 'file,caption,call-outs\na.jpg,Helm,"30 %, 55 % A1"\n', ['photographs.csv:2:1 REF201 ⟨a.jpg⟩', 'photographs.csv:2:12 SCH102 ⟨"30 %, 55 % A1"⟩'], 1, 'one of keys and values goes into a YAML file'),
  withFile('records of maintenance as a table', 'maintenance-records.csv', 'task;item;date;nots\nbilge-pump-test;M1;04.05.2026;x\n', [
    'maintenance-records.csv:1:16 SCH101 ⟨nots⟩', 'maintenance-records.csv:2:17 REF103 ⟨M1⟩', 'maintenance-records.csv:2:20 SCH102 ⟨04.05.2026⟩',
  ], 1),
  withFile('running hours as a table', 'running-hours.csv', 'item,date,hours\nM1,2026-02-30,"1,200 h"\nM1,2026-05-04\n', [
    'running-hours.csv:2:4 SCH102 ⟨2026-02-30⟩', 'running-hours.csv:2:15 SCH104 ⟨"1,200 h"⟩', 'running-hours.csv:3:1 SRC124 ⟨M1,2026-05-04⟩',
  ], 2),
  withFile('a header alone', 'zones.csv', zonesHeader, [], 0),
  withFile('an empty table', 'zones.csv', '', [], 0),
  withFile('a column that reaches for the prototype', 'zones.csv', 'tag,name,space,__proto__.polluted\nhelm,Helm,deck,x\n', ['zones.csv:1:16 SCH101 ⟨__proto__.polluted⟩'], 1),
]
