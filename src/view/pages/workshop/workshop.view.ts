/** Workshop documents: what the installer has in the boat and at the bench. */
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import type { Block, Page, Text } from '../../view-model.js'
import { billKey, billPage } from './bill.view.js'
import { legendsKey, legendsPage } from './legends.view.js'
import { testSheetPages, testSheetsKey } from './test-sheets.view.js'
import { colourTable, plugPinTable, wireListPages, wireListTable } from './wire-lists.view.js'

export function workshopPages(context: ViewContext): readonly Page[] {
  const { cables, circuits } = context.vessel
  const sheets = testSheetPages(context)
  if (cables.length === 0 && circuits.length === 0 && sheets.length === 0) return []
  const others = [billPage(context), legendsPage(context), ...sheets]
  return [{
    key: fixedPages.workshop,
    title: 'Workshop documents',
    kicker: null,
    lead: ['For whoever pulls, terminates and checks: every cable at both of its ends, what to buy, what to put beside a panel, what to measure.'],
    printed: [{ is: 'markdown', source: howToUse }, wireListTable(context), colourTable(context), ...plugPinTable(context)],
    trail: [],
    blocks: [
      { is: 'cards', cards: cards.filter(({ to }) => others.some(({ key }) => key === to)) },
      { is: 'paragraph', text: inWorkbook },
      { is: 'markdown', source: howToUse }, wireListTable(context), colourTable(context), ...plugPinTable(context),
    ] satisfies readonly Block[],
  }, ...wireListPages(context), ...others]
}

const cards: readonly { readonly title: string; readonly to: string; readonly text: Text }[] = [
  { title: 'Bill of cable and parts', to: billKey, text: ['Lengths of each type, what to order, ends, connectors, fuses.'] },
  { title: 'Panel legends', to: legendsKey, text: ['Cards to cut out, for the inside of a panel’s door.'] },
  { title: 'Test sheets', to: testSheetsKey, text: ['What is still to be measured and tried, with what to expect.'] },
]

export const workbookFile = 'workshop.xlsx'
const inWorkbook: Text = ['The same as tables to sort, filter and sum: ', { is: 'pack file', file: workbookFile, text: workbookFile }, '.']

const howToUse = `
How to use a wire list:

1. Stand in the zone. The list goes through it panel by panel, way by way, then item by item.
2. **Pulled**, **terminated**, **checked**: the printed list has a box for each; tick what is done at this end. Checked means: the right terminal, the label as printed here, a pull by hand on each conductor, and continuity to the other end with the circuit dead.
3. The **label** is as printed for this end of the cable.
4. What differs from the list is written on it and goes into the vessel's data, so that the next list is right.

Make dead, and secure against being made live, before a cover comes off. Work on mains voltage is for licensed persons; local codes come first.
`
