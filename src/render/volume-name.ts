/** Where a volume is written before it is printed. */
/** `manual.pdf` is printed from `manual.html`. */
export const documentOf = ({ file }: { readonly file: string }): string => file.replace(/\.pdf$/, '.html')
