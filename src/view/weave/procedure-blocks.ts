/** The yard's own procedures, where they take the place of general text. */
import type { Procedure } from '../../model/vessel.js'
import type { ProcedurePlace } from '../../references/procedure-places.js'
import type { ViewContext } from '../context.js'
import type { Block } from '../view-model.js'

export const proceduresFor = ({ vessel }: ViewContext, place: ProcedurePlace): readonly Procedure[] => vessel.procedures.filter(procedure => procedure.place === place)

export const procedureBlocks = (procedures: readonly Procedure[]): readonly Block[] => procedures.map(({ text }) => ({ is: 'markdown', source: text }))
