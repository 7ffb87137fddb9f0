/** Every schedule of the pack as a table for machines. Quantities keep their unit in the cell, as printed. */
import type { ViewContext } from '../context.js'
import { cablesTable, wirewayTable } from '../pages/cables.view.js'
import { circuitTable } from '../pages/circuits/circuits.view.js'
import { measurementTable } from '../pages/commissioning/commissioning-measured.js'
import { equipmentTable } from '../pages/equipment/equipment.view.js'
import { serialWireSchedule } from '../pages/networks/serial.view.js'
import { maintenanceSchedule } from '../pages/maintenance/schedule.js'
import { panelsTable } from '../pages/panels.view.js'
import { settingsSchedule, softwareTable } from '../pages/record/configuration.view.js'
import { byTag, scheduleOf } from '../tables.js'
import type { Schedule, Sheet } from '../view-model.js'
import { billSheet, wireSheet } from './workbooks.js'

export function schedules(context: ViewContext): readonly Schedule[] {
  const { vessel, lookup } = context
  return [
    scheduleOf('equipment.csv', equipmentTable(context, [...lookup.items.values()].toSorted(byTag), 'equipment', 'Equipment')),
    scheduleOf('panels.csv', panelsTable(context, vessel.panels.toSorted(byTag))),
    scheduleOf('circuits.csv', circuitTable(context, vessel.circuits, { id: 'circuits', caption: 'Circuits' })),
    scheduleOf('cables.csv', cablesTable(context, vessel.cables, { id: 'cables', caption: 'Cables' })),
    scheduleOf('wireways.csv', wirewayTable(context, vessel.wireways)),
    scheduleOf('measurements.csv', measurementTable(context)),
    scheduleOf('software.csv', softwareTable(context)),
    settingsSchedule(context),
    serialWireSchedule(context),
    scheduleOfSheet('wires.csv', wireSheet(context)),
    scheduleOfSheet('cable-bill.csv', billSheet(context)),
    maintenanceSchedule(context),
    {
      file: 'findings.csv',
      columns: ['Id', 'Name', 'Severity', 'Subject', 'Message', 'Remedy', 'File', 'Line', 'Accepted by', 'Accepted on', 'Reason'],
      rows: context.findings.map(({ id, name, severity, subject, message, remedy, at, accepted }) =>
        [id, name, severity, subject.id, message, remedy, at?.file ?? '', at === null ? '' : String(at.line), accepted?.by ?? '', accepted?.date ?? '', accepted?.reason ?? '']),
    },
  ]
}

const scheduleOfSheet = (file: string, { columns, rows }: Sheet): Schedule =>
  ({ file, columns: columns.map(({ title }) => title), rows: rows.map(row => row.map(cell => String(cell ?? ''))) })
