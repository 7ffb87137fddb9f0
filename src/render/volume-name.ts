/** Where a volume is written before it is printed. */
/** `manual.pdf` is printed from `manual/index.html`: each has a folder with what it shows, since one is printed while the next is written. */
export const volumeDocumentOf = ({ file }: { readonly file: string }): string => file.replace(/\.pdf$/, '/index.html')

/** `labels/ways.pdf` is printed from `labels/ways.html`. */
export const documentOf = ({ file }: { readonly file: string }): string => file.replace(/\.pdf$/, '.html')
