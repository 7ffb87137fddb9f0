/** A small view with one block of every kind, for the render stage. */
import type { Block, Page, View } from '../../src/view/view-model.js'

export const everyBlock: readonly Block[] = [
  { is: 'heading', text: 'A heading', anchor: 'a-heading' },
  { is: 'paragraph', text: ['Words, ', { is: 'link', tag: true, text: 'P1', to: 'equipment/p1' }, ' ', { is: 'strong', text: 'strong' }, { is: 'break' }, { is: 'muted', text: 'muted' }, { is: 'file', file: 'documents/a plan.pdf', text: 'A plan' }, { is: 'page number', to: 'equipment/p1' }] },
  { is: 'markdown', source: 'Some *text* with [a link](asfitted:equipment/p1) and <b>HTML</b>.' },
  { is: 'facts', caption: 'Facts', entries: [{ label: 'Label', value: [{ is: 'tag', text: 'W1' }] }] },
  {
    is: 'table', id: 'a-table', forPen: false, layout: null, caption: 'A table', empty: '', note: ['A note.'],
    columns: [{ title: 'Tag', unit: null, align: 'left', width: 'tag' }, { title: 'Current', unit: 'A', align: 'right', width: 'number' }],
    rows: [{ cells: [[{ is: 'tag', text: 'F1' }], ['2.0 < 3.0']], level: 'error', anchor: 'row-f1' }],
  },
  { is: 'table', id: 'no-rows', forPen: false, layout: null, caption: 'Spare parts', empty: 'None is recorded.', note: null, columns: [], rows: [] },
  { is: 'diagram', id: 'drawn', about: null, caption: 'A diagram', mermaid: 'flowchart LR\n a', description: ['F1 feeds P1.'] },
  { is: 'diagram', id: 'not-drawn', about: null, caption: 'Another diagram', mermaid: 'flowchart LR\n a', description: ['F2 feeds P1.'] },
  { is: 'drawing', id: 'own', narrow: true, caption: 'An own drawing', svg: '<svg role="group"><a href="asfitted:equipment/p1"><text>P1</text></a></svg>', description: ['P1 on the backbone.'] },
  { is: 'drawing', id: 'over-picture', wide: true, pictures: ['drawings/plan.png', 'drawings/gone.png'], caption: 'Over the yard’s drawing', svg: '<svg role="img"><image href="asfitted-picture:drawings/plan.png" x="1"/><image href="asfitted-picture:drawings/gone.png" x="2"/></svg>', description: ['A plan.'] },
  {
    is: 'picture', file: 'photographs/helm.jpg', caption: ['The helm'], alternative: 'The helm. Numbered points: 1 P1 Display.',
    marks: [{ number: '1', fromLeft: '23.5%', fromTop: '40%', name: 'P1 Display', to: 'equipment/p1', meant: true }, { number: '2', fromLeft: '70%', fromTop: '8%', name: 'W1', to: null, meant: false }],
    list: [{ number: '1', text: [{ is: 'link', tag: true, text: 'P1', to: 'equipment/p1' }, ' Display: behind the "glass"'] }],
  },
  { is: 'picture', file: 'photographs/gone.jpg', caption: ['Gone'], alternative: 'Gone', marks: [], list: [] },
  { is: 'callout', signal: 'WARNING', title: 'Mains voltage', markdown: 'Switch off first.' },
  {
    is: 'working', title: 'Voltage drop', formula: String.raw`\Delta U = \frac{0.0164\,I\,L}{S}`,
    inputs: [{ symbol: 'I', label: 'current', value: '4.5 A', remark: null }], results: [{ symbol: String.raw`\Delta U`, label: 'voltage drop', value: '0.21 V', remark: null }],
    limit: ['limit at most 3 %'], verdict: { text: 'within', level: 'good' }, sources: ['Source: a standard.'], assumes: ['Both conductors alike.'],
  },
  {
    is: 'findings', empty: '', findings: [{
      id: 'DCD101', name: 'drop', severity: 'error', subject: ['C1'], message: 'Circuit C1: too much.', limit: 'Limit at most 3 %.', remedy: 'Use more copper.',
      at: { file: 'circuits.yaml', line: 7, column: 1, endLine: 7, endColumn: 2 }, accepted: null, kind: { text: 'DCD101', to: 'home' },
    }],
  },
  { is: 'spoken', id: 'spoken', caption: 'Say', lines: [{ say: ['MAYDAY'], blank: null }, { say: ['MY POSITION IS'], blank: 'latitude and longitude' }] },
  { is: 'legends', empty: '', cards: [{ tag: 'A1', name: 'Panel', part: '1 of 2', wayTitle: 'Way', mains: 'Mains voltage: contact kills.', rows: [{ way: '1', name: 'Radio', rating: 'fuse 10 A', feeds: 'T1', spare: false, unprotected: false }, { way: '2', name: 'spare', rating: '', feeds: '', spare: true, unprotected: false }] }] },
  { is: 'steps', id: 'steps', caption: 'P1 does not work', note: ['Look first.'], steps: [{ number: '1', title: ['At ', { is: 'link', tag: true, text: 'P1', to: 'equipment/p1' }], where: ['Helm'], lines: [{ label: 'Measure', text: ['11.5 V'] }] }] },
  { is: 'reach', id: 'reach', caption: 'Fire', entries: [{ act: 'Take', what: [{ is: 'tag', text: 'F91' }, ' Extinguisher'], where: ['Wheelhouse: by the door'], remark: ['Aim first.'] }, { act: null, what: ['Liferaft'], where: null, remark: null }] },
  { is: 'cards', cards: [{ title: 'A card', to: 'equipment/p1', text: ['Text.'] }] },
]

const page = (key: string, title: string, blocks: readonly Block[] = []): Page => ({ key, title, kicker: 'Kicker', lead: ['Lead.'], blocks, printed: null, trail: [] })

export const aView: View = {
  vesselName: 'Test Boat',
  titleBlock: { title: 'Manual', vessel: 'Test Boat', documentNumber: 'N-1 "draft"', issue: 'A', issuedOn: '2026-01-02', preparedBy: 'A. Person', checkedBy: 'B. Person', installer: 'Installer', basis: 'ISO 13297' },
  cover: { subtitle: 'A boat', facts: [{ label: 'MMSI', value: ['000000000'] }], note: 'A note.' },
  pages: [page('home', 'Test Boat', everyBlock), page('find', 'Find'), page('emergency', 'Emergency'), page('equipment/p1', 'P1 Display', everyBlock.filter(block => block.is !== 'table'))],
  volumes: [{ file: 'manual.pdf', name: 'Manual', title: 'Manual', fronted: true, chapters: [
    { number: '1', title: 'Test Boat', anchor: 'chapter-1', introduction: null, pageKeys: ['home'], compact: false, twoColumns: false, landscape: false, listed: true },
    { number: '2', title: 'Equipment', anchor: 'chapter-2', introduction: ['Said once.'], pageKeys: ['equipment/p1'], compact: true, twoColumns: true, landscape: true, listed: true },
  ] }],
  labels: { documents: [], lists: [] },
  files: [],
  workbooks: [],
  navigation: [{ title: 'Equipment', key: 'equipment/p1', children: [{ title: 'P1', key: 'equipment/p1', children: [] }] }],
  schedules: [],
}
