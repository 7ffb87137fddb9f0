/** Sheets of labels → PDFs whose pages are the stock's and whose millimetres are millimetres. */
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { Browser } from 'puppeteer'
import type { LabelDocument } from '../view/view-model.js'
import { openPage } from './browser.js'
import { compactPdf, type DocumentInformation } from './compact-pdf.js'
import { openDocument, printToPdf } from './print-pdf.js'
import { documentOf } from './volume-name.js'

/**
 * Prints each document from `print/` of the folder to its place in the folder. How many sheets each has.
 *
 * Errors: a document is missing, or something that it asks for.
 */
export async function printLabels(
  browser: Browser, documents: readonly LabelDocument[], folder: string, metadataOf: (title: string) => DocumentInformation,
): Promise<readonly number[]> {
  const page = await openPage(browser)
  try {
    const session = await page.createCDPSession()
    for (const document of documents) {
      await openDocument(page, path.join(folder, 'print', documentOf(document)))
      const pdf = await compactPdf(await printToPdf(session, { tagged: false }), metadataOf(document.title), [])
      const place = path.join(folder, document.file)
      await mkdir(path.dirname(place), { recursive: true })
      await writeFile(place, pdf)
    }
    return documents.map(({ sheets }) => sheets.length)
  } finally {
    await page.close()
  }
}
