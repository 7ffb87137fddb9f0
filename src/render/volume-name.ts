/** Where a volume is written before it is printed. */
import type { Volume } from '../view/view-model.js'

/** `manual.pdf` is printed from `manual.html`. */
export const documentOf = ({ file }: Volume): string => file.replace(/\.pdf$/, '.html')
