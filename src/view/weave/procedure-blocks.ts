/** The yard's own procedure, where it takes the place of general text. */
import type { Procedure } from '../../model/vessel.js'
import type { ProcedurePlace } from '../../references/procedure-places.js'
import type { ViewContext } from '../context.js'
import { muted } from '../text.js'
import type { Block } from '../view-model.js'

export const procedureFor = ({ vessel }: ViewContext, place: ProcedurePlace): Procedure | null => vessel.procedures.find(procedure => procedure.place === place) ?? null

export const procedureBlocks = ({ title, text }: Procedure): readonly Block[] =>
  [{ is: 'markdown', source: text }, { is: 'paragraph', text: [muted(`Procedure of the yard: ${title}.`)] }]
