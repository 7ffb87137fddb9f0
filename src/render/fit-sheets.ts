/** Runs in the browser: what is meant for one sheet and is too long for it leaves out what is needed least. */

/**
 * @param content  what a sheet holds, in millimetres
 *
 * The words of the classes are those of `SheetFit`; the style sheet says what each leaves out.
 */
export function fitSheets(content: { readonly width: number; readonly height: number }): void {
  const fits = ['fit-all-large', 'fit-all', 'fit-without-drawings', 'fit-without-remarks', 'fit-first-of-each-list']
  const millimetres = 96 / 25.4
  for (const sheet of document.querySelectorAll<HTMLElement>('.one-sheet')) {
    const around = sheet.parentElement!
    around.style.width = `${content.width}mm`
    for (const fit of fits) {
      sheet.classList.remove(...fits)
      sheet.classList.add(fit)
      if (around.getBoundingClientRect().height <= content.height * millimetres) break
    }
    around.style.width = ''
  }
}
