/** The title block at the foot of every printed sheet (ISO 7200 in idea), as `@page` margin boxes. */
import type { TitleBlock } from '../view/view-model.js'

/** A CSS string: quotes, backslashes and line ends escaped. */
const cssString = (text: string): string => `"${text.replace(/[\\"]/g, c => `\\${c}`).replace(/\n/g, ' ')}"`

const lines = (...parts: readonly string[]): string => parts.map(cssString).join(' "\\A" ')

/** Of a page in an emergency, in millimetres: as much room as a printer leaves, and the title block. */
const sheetMargins = { top: 9, right: 12, bottom: 23, left: 16 }
/** What goes on it, in millimetres; a millimetre is kept for rounding. */
export const sheetContent = { width: 210 - sheetMargins.right - sheetMargins.left, height: 296 - sheetMargins.top - sheetMargins.bottom }

export function pageMargins(block: TitleBlock): string {
  const cell = 'font: 600 8pt/1.35 "IBM Plex Sans Condensed"; color: #17242d; white-space: pre; vertical-align: top; border-top: 1.2pt solid #17242d; border-bottom: 0.6pt solid #17242d; padding: 1.2mm 2.4mm 1.2mm; margin: 4mm 0 7mm;'
  const boxes = `
  @bottom-left { content: ${lines(block.vessel, block.title)}; width: 31%; text-align: left; ${cell} border-left: 0.6pt solid #17242d; }
  @bottom-center { content: ${lines(`No. ${block.documentNumber}`, `Prepared ${block.preparedBy} · checked ${block.checkedBy}`)}; width: 38%; text-align: left; ${cell} border-left: 0.6pt solid #17242d; }
  @bottom-right { content: ${lines(`Issue ${block.issue} · ${block.issuedOn}`)} "\\A" "Sheet " counter(page) " of " counter(pages); width: 31%; text-align: left; ${cell} border-left: 0.6pt solid #17242d; border-right: 0.6pt solid #17242d; }`
  return `@page { size: A4 portrait; margin: 15mm 14mm 25mm 20mm;${boxes}
}
@page sheet { size: A4 portrait; margin: ${Object.values(sheetMargins).map(mm => `${mm}mm`).join(' ')};${boxes}
}
@page landscape { size: A4 landscape; margin: 15mm 14mm 25mm 14mm;${boxes}
}
@page cover { margin: 18mm 18mm 14mm 20mm; @bottom-left { content: none; border: 0; } @bottom-center { content: none; border: 0; } @bottom-right { content: none; border: 0; } }`
}
