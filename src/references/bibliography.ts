/** Every source once, by key. Calculations, limits and tables cite it by that key. */
export type SourceKey = keyof typeof bibliography

export interface Citation {
  readonly source: SourceKey
  /** Clause, table or row. */
  readonly place: string
  /** How this figure was confirmed, where that differs from the rest of the source. */
  readonly standing?: Standing
}

export type Standing = 'public law' | 'published' | 'derived' | 'from memory' | 'common practice'
export interface Source {
  /** Short name by which the text cites it. */
  readonly designation: string
  readonly title: string
  readonly publisher: string
  readonly edition: string | null
  /** How the figures taken from it were confirmed. */
  readonly standing: Standing
  readonly remark: string | null
}

export const bibliography = {
  'astm-b258': {
    designation: 'ASTM B258', title: 'Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires',
    publisher: 'ASTM International', edition: null, standing: 'from memory',
    remark: 'The formula is confirmed by its two defining pairs: 4/0 is 211 600 cmil, 36 AWG is 25 cmil.',
  },
  'iec-60228': {
    designation: 'IEC 60228', title: 'Conductors of insulated cables', publisher: 'IEC', edition: null, standing: 'published',
    remark: 'Class 5 maximum resistances read in three published tables that agree value by value.',
  },
  'iec-60028': {
    designation: 'IEC 60028', title: 'International standard of resistance for copper', publisher: 'IEC', edition: null, standing: 'from memory',
    remark: '58.0 MS/m and 0.00393 1/K at 20 °C.',
  },
  'iso-13297': {
    designation: 'ISO 13297', title: 'Small craft. Electrical systems. Alternating and direct current installations',
    publisher: 'ISO', edition: '2021, confirm against a purchased copy', standing: 'published',
    remark: 'Voltage-drop classes and constant read as quoted in published guides; conductor table, factors and protection rule from memory.',
  },
  'iso-10133': {
    designation: 'ISO 10133', title: 'Small craft. Electrical systems. Extra-low-voltage d.c. installations',
    publisher: 'ISO', edition: '2012, extracts', standing: 'published', remark: 'Extracts of clauses 4 and 7 read in public previews; Annex A from memory.',
  },
  'abyc-e11': {
    designation: 'ABYC E-11', title: 'AC and DC electrical systems on boats', publisher: 'American Boat & Yacht Council', edition: null,
    standing: 'published', remark: 'Read as quoted in published guides, catalogues and cable tables.',
  },
  '33-cfr-183': {
    designation: '33 CFR 183', title: 'Code of Federal Regulations, title 33, part 183, subpart I: electrical systems', publisher: 'United States Government',
    edition: null, standing: 'public law',
    remark: 'Table 5 and the text were read in the law itself. Note 1 (engine spaces) and note 2 (bundles) were not: their standing is beside each figure.',
  },
  'iec-60364-4-43': {
    designation: 'IEC 60364-4-43', title: 'Low-voltage electrical installations. Protection against overcurrent', publisher: 'IEC', edition: null,
    standing: 'from memory', remark: 'A land rule: design current, rating and capacity in rising order.',
  },
  'iec-60364-5-52': {
    designation: 'IEC 60364-5-52', title: 'Low-voltage electrical installations. Selection and erection of electrical equipment. Wiring systems', publisher: 'IEC',
    edition: null, standing: 'from memory', remark: 'A land rule for the voltage drop of a.c. circuits, used as advice.',
  },
  'iec-60364-7-712': {
    designation: 'IEC 60364-7-712', title: 'Low-voltage electrical installations. Solar photovoltaic (PV) power supply systems', publisher: 'IEC', edition: null,
    standing: 'from memory', remark: 'A land rule: when overload protection of the cables of a panel may be left out.',
  },
  'iec-60898-1': {
    designation: 'IEC 60898-1', title: 'Circuit-breakers for overcurrent protection for household and similar installations. AC operation', publisher: 'IEC', edition: null,
    standing: 'from memory', remark: 'Preferred rated currents.',
  },
  'nec-210': {
    designation: 'NEC (NFPA 70)', title: 'National Electrical Code (NFPA 70), article 210: branch circuits', publisher: 'NFPA', edition: null,
    standing: 'from memory', remark: 'A land rule, used as advice.',
  },
  'iec-60364-6': {
    designation: 'IEC 60364-6', title: 'Low-voltage electrical installations. Verification', publisher: 'IEC', edition: null, standing: 'from memory',
    remark: 'A land rule: least insulation resistance by voltage, table 6A.',
  },
  'iec-60896': {
    designation: 'IEC 60896', title: 'Stationary lead-acid batteries', publisher: 'IEC', edition: null, standing: 'from memory',
    remark: 'Parts 11 and 21: internal resistance and short-circuit current from two points of the discharge curve.',
  },
  'iec-60945': {
    designation: 'IEC 60945', title: 'Maritime navigation and radiocommunication equipment and systems. General requirements', publisher: 'IEC', edition: null,
    standing: 'from memory', remark: 'Variation of the supply voltage in which equipment must work.',
  },
  'iec-61008': {
    designation: 'IEC 61008', title: 'Residual current operated circuit-breakers without integral overcurrent protection', publisher: 'IEC', edition: null,
    standing: 'from memory', remark: 'Range of the tripping current and longest trip times of the general type.',
  },
  'abyc-a28': {
    designation: 'ABYC A-28', title: 'Galvanic isolators', publisher: 'American Boat & Yacht Council', edition: null, standing: 'from memory', remark: null,
  },
  'ul-943': {
    designation: 'UL 943', title: 'Ground-fault circuit-interrupters', publisher: 'UL Standards & Engagement', edition: null, standing: 'from memory',
    remark: 'The curve of the longest trip time; its three usual points are repeated in makers’ leaflets.',
  },
  'nec-chapter-9': {
    designation: 'NEC (NFPA 70)', title: 'National Electrical Code (NFPA 70), chapter 9, table 1: conduit fill', publisher: 'NFPA', edition: null, standing: 'published',
    remark: 'A land rule, used as advice.',
  },
  'iso-8820-3': {
    designation: 'ISO 8820-3', title: 'Road vehicles. Fuse-links. Part 3: fuse-links with tabs', publisher: 'ISO', edition: null,
    standing: 'from memory', remark: null,
  },
  'iso-8820-5': {
    designation: 'ISO 8820-5', title: 'Road vehicles. Fuse-links. Part 5: fuse-links with axial terminals, strip fuse-links', publisher: 'ISO', edition: null,
    standing: 'from memory', remark: null,
  },
  'nec-430': {
    designation: 'NEC (NFPA 70)', title: 'National Electrical Code (NFPA 70), articles 310 and 430: conductors in parallel, motors', publisher: 'NFPA', edition: null,
    standing: 'from memory', remark: 'Land rules, used as advice.',
  },
  'iec-60269': {
    designation: 'IEC 60269', title: 'Low-voltage fuses', publisher: 'IEC', edition: null, standing: 'from memory', remark: 'Made for a.c.; used as advice.',
  },
  'sae-j537': {
    designation: 'SAE J537', title: 'Storage batteries: cold cranking test', publisher: 'SAE International', edition: null, standing: 'from memory',
    remark: 'A 12 V battery gives its cold cranking current at −18 °C for 30 s and then still has 7.2 V.',
  },
  'coax-tables': {
    designation: 'coaxial cable tables', title: 'Attenuation of coaxial cables at 150 MHz: a trade training guide for radio repeaters and a table for emergency communications',
    publisher: '', edition: null, standing: 'published', remark: 'Two published tables; values for one kind of cable spread by some 15 %.',
  },
  'connector-allowance': {
    designation: 'licensing practice', title: 'Allowance for connectors in applications for land-mobile radio licences: 0.25 dB each at 150 MHz', publisher: '',
    edition: null, standing: 'published', remark: 'On the safe side: a good connector well fitted takes 0.05 to 0.1 dB.',
  },
  'radio-theory': {
    designation: 'radio engineering', title: 'Decibels, reflection on lines, mean power of pulses', publisher: '', edition: null, standing: 'derived', remark: null,
  },
  'atis-glossary': {
    designation: 'ATIS telecom glossary', title: 'Telecom glossary, entry on the radio horizon', publisher: 'Alliance for Telecommunications Industry Solutions', edition: null,
    standing: 'published', remark: 'Over an earth of four thirds of its radius.',
  },
  'itu-r-p310': {
    designation: 'ITU-R P.310', title: 'Definitions of terms relating to propagation in non-ionized media', publisher: 'ITU', edition: null, standing: 'from memory',
    remark: 'The effective radius of the earth: four thirds of its radius in a standard atmosphere.',
  },
  'american-navigator': {
    designation: 'American Practical Navigator', title: 'The American practical navigator (Bowditch)', publisher: 'National Geospatial-Intelligence Agency', edition: null, standing: 'from memory',
    remark: 'Distances of the radar horizon and of the visible horizon.',
  },
  'imo-sn-circ-227': {
    designation: 'IMO SN/Circ.227', title: 'Guidelines for the installation of a shipborne automatic identification system (AIS)', publisher: 'IMO', edition: '2003', standing: 'published',
    remark: 'Written for class A on ships; annex, paragraph 2.2.',
  },
  'ais-manuals': {
    designation: 'AIS installation manuals', title: 'Installation manuals of AIS transceivers', publisher: '', edition: null, standing: 'published',
    remark: 'A standing wave ratio below 1.5 from 156 to 163 MHz; a view of the sky from 5° to 90°.',
  },
  '47-cfr-1-1310': {
    designation: '47 CFR 1.1310', title: 'Radiofrequency radiation exposure limits', publisher: 'United States Government', edition: null, standing: 'public law',
    remark: 'Table 1, read in two reprints.',
  },
  'icnirp-2020': {
    designation: 'ICNIRP 2020', title: 'Guidelines for limiting exposure to electromagnetic fields (100 kHz to 300 GHz)', publisher: 'International Commission on Non-Ionizing Radiation Protection',
    edition: '2020', standing: 'published', remark: 'Local exposure read in a reprinted table; whole body from memory.',
  },
  'fcc-oet-65': {
    designation: 'FCC OET Bulletin 65', title: 'Evaluating compliance with FCC guidelines for human exposure to radiofrequency electromagnetic fields', publisher: 'Federal Communications Commission',
    edition: '97-01', standing: 'from memory', remark: 'Power density in the far field, with the factor 2.56 for reflection from the ground.',
  },
  'ieee-802-3': {
    designation: 'IEEE 802.3', title: 'IEEE Standard for Ethernet', publisher: 'IEEE', edition: null, standing: 'published',
    remark: 'Power classes and voltages read in two published tables that agree. Resistance of the channel and pairs used by each speed from memory.',
  },
  'iso-iec-11801': {
    designation: 'ISO/IEC 11801', title: 'Information technology. Generic cabling for customer premises', publisher: 'ISO/IEC', edition: null, standing: 'from memory',
    remark: 'A land rule: copper channel of 100 m, 90 m of it fixed cable.',
  },
  'rfc-4632': {
    designation: 'RFC 4632', title: 'Classless inter-domain routing: the internet address assignment and aggregation plan', publisher: 'IETF', edition: '2006',
    standing: 'from memory', remark: 'Prefix notation. That the first and last address of a subnet are no host addresses is in RFC 1122.',
  },
  'vessel-data': {
    designation: 'the vessel’s data', title: 'Recorded in the data of this vessel: plates, makers’ papers, rules agreed for her', publisher: '', edition: null,
    standing: 'published', remark: 'As good as the reading of whoever recorded it.',
  },
  'ul-248-15': {
    designation: 'UL 248-15', title: 'Low-voltage fuses. Part 15: class T fuses', publisher: 'UL Standards & Engagement', edition: null,
    standing: 'from memory', remark: null,
  },
  'fao-56': {
    designation: 'FAO Irrigation and Drainage Paper 56', title: 'Crop evapotranspiration. Guidelines for computing crop water requirements', publisher: 'FAO',
    edition: '1998', standing: 'from memory', remark: 'Chapter 3: radiation from the sun by latitude, day and hour, with its worked examples 8 to 10 and 19.',
  },
  'iec-62485-2': {
    designation: 'IEC 62485-2', title: 'Safety requirements for secondary batteries and battery installations. Part 2: stationary batteries', publisher: 'IEC',
    edition: null, standing: 'from memory', remark: 'Ventilation of lead-acid batteries; a land rule, used as advice.',
  },
  'peukert-1897': {
    designation: 'Peukert 1897', title: 'Dependence of the capacity of lead accumulators on the discharge current', publisher: 'Elektrotechnische Zeitschrift 20',
    edition: '1897', standing: 'published', remark: 'The form with the rated time read in public battery knowledge bases; the paper itself was not at hand.',
  },
  'iso-25862': {
    designation: 'ISO 25862 (draft)', title: 'Ships and marine technology. Marine magnetic compasses, binnacles and azimuth reading devices', publisher: 'ISO',
    edition: 'draft', standing: 'published', remark: 'Annexes E and F read in a public draft: compass safe distance, wiring near a compass.',
  },
  'colreg': {
    designation: 'COLREG', title: 'Convention on the International Regulations for Preventing Collisions at Sea, 1972', publisher: 'IMO', edition: null,
    standing: 'from memory', remark: 'Ranges of rule 22 and parts of annex I were read in public copies of the law; each figure says so.',
  },
  'cfr-33-84': {
    designation: '33 CFR 84', title: 'Code of Federal Regulations, title 33, part 84: positioning and technical details of lights', publisher: 'United States Government',
    edition: null, standing: 'public law', remark: 'Formula and table of luminous intensity read in the law itself; one public reprint misprints both.',
  },
  'nmea-depth': {
    designation: 'depth sentence and parameter group', title: 'Depth with offset: sentence DPT of IEC 61162-1, parameter group 128267', publisher: '', edition: null,
    standing: 'from memory', remark: 'Positive is the distance from transducer to waterline, negative the distance from transducer to keel.',
  },
  'itu-r-m1371': {
    designation: 'ITU-R M.1371', title: 'Technical characteristics for an automatic identification system using time division multiple access', publisher: 'ITU', edition: null,
    standing: 'from memory', remark: null,
  },
  'plane-geometry': { designation: 'geometry', title: 'Plane and spherical geometry of what stands on a boat and what is seen from it', publisher: '', edition: null, standing: 'derived', remark: null },
  'magnetostatics': { designation: 'magnetostatics', title: 'Field of a steady current (Biot and Savart)', publisher: '', edition: null, standing: 'derived', remark: null },
  'rigid-statics': { designation: 'statics', title: 'Moments, centre of gravity and small angles of heel', publisher: '', edition: null, standing: 'derived', remark: null },
  'bus-cable-guides': {
    designation: 'installation guides for bus cable', title: 'Installation guides and formula sheets of makers of bus cable and devices for NMEA 2000', publisher: '',
    edition: null, standing: 'published', remark: 'Several guides, which differ on currents (3 A or 4 A in light cable) and on the drop; one prints the resistance of light cable ten times too small.',
  },
  'iec-61162-3': {
    designation: 'IEC 61162-3', title: 'Maritime navigation and radiocommunication equipment and systems. Digital interfaces. Part 3: serial data instrument network', publisher: 'IEC',
    edition: null, standing: 'from memory', remark: 'NMEA 2000: supply range of a device, fast packets.',
  },
  'sae-j1939': {
    designation: 'SAE J1939', title: 'Serial control and communications heavy duty vehicle network', publisher: 'SAE International', edition: null, standing: 'from memory',
    remark: 'Parts 11, 15, 21 and 71: lengths, nodes, transport protocol, parameter groups of engines.',
  },
  'davis-2007': {
    designation: 'Davis et al. 2007', title: 'Controller Area Network (CAN) schedulability analysis: refuted, revisited and revised', publisher: 'Real-Time Systems 35',
    edition: '2007', standing: 'published', remark: 'Davis, Burns, Bril, Lukkien; longest frame with stuffed bits. The lengths without them are also in the Linux header for CAN frame lengths.',
  },
  'open-pgn-dataset': {
    designation: 'CANboat dataset', title: 'Open dataset of parameter groups (canboat.json, Apache-2.0)', publisher: 'CANboat project', edition: '8.0.0-beta3, schema 2.5.0',
    standing: 'published', remark: 'Findings of a community, not the text of the standard. Lengths and priorities vary between its versions.',
  },
  'makers-data': {
    designation: 'recorded data', title: 'What is recorded of the item in the vessel’s data, as its maker states it', publisher: '', edition: null,
    standing: 'published', remark: null,
  },
  'itu-m585': {
    designation: 'ITU-R M.585', title: 'Assignment and use of identities in the maritime mobile service', publisher: 'ITU', edition: null, standing: 'published',
    remark: 'The forms read in public reprints and in a summary by a coast guard.',
  },
  'itu-mid': {
    designation: 'ITU MID table', title: 'Table of maritime identification digits', publisher: 'ITU', edition: null, standing: 'published',
    remark: 'Read in two public listings that agree; what was given out later may be missing.',
  },
  'itu-call-signs': {
    designation: 'ITU call sign series', title: 'Radio Regulations, appendix 42: table of allocation of international call sign series', publisher: 'ITU', edition: null,
    standing: 'published', remark: 'Read in two public listings.',
  },
  'itu-rr': {
    designation: 'ITU Radio Regulations', title: 'Radio Regulations, articles 19 (identification of stations) and 32 (distress communications), appendix 14 (spelling)',
    publisher: 'ITU', edition: null, standing: 'published', remark: 'Article 19.50 and article 32 read in public extracts; what is from memory is marked where it is used.',
  },
  '47-cfr-80': {
    designation: '47 CFR 80', title: 'Code of Federal Regulations, title 47, part 80: stations in the maritime services', publisher: 'United States Government', edition: null,
    standing: 'public law', remark: '80.314 (distress call and message) and 80.335 (cancelling a false alert) read in the law.',
  },
  'cospas-t001': {
    designation: 'C/S T.001', title: 'Specification for Cospas-Sarsat 406 MHz distress beacons, with the coding guide (C/S G.005)', publisher: 'Cospas-Sarsat', edition: null,
    standing: 'published', remark: 'First-generation beacons. Country code, serial and MMSI coding read in the public coding guide; its worked examples are in the tests.',
  },
  'cospas-t018': {
    designation: 'C/S T.018', title: 'Specification for second-generation Cospas-Sarsat 406 MHz distress beacons', publisher: 'Cospas-Sarsat', edition: null,
    standing: 'from memory', remark: 'The make-up of the 23 digits is confirmed by the worked examples of C/S T.018 and C/S G.005.',
  },
  '33-cfr-181': {
    designation: '33 CFR 181', title: 'Code of Federal Regulations, title 33, part 181: manufacturer requirements, subpart C: hull identification numbers',
    publisher: 'United States Government', edition: null, standing: 'public law', remark: '181.25 read in the law.',
  },
  'eu-2013-53': {
    designation: 'Directive 2013/53/EU', title: 'Directive 2013/53/EU on recreational craft and personal watercraft', publisher: 'European Union', edition: null,
    standing: 'from memory', remark: 'The headings of annex I were read in the official contents list; what the points ask for, and the standards named with them, are from memory.',
  },
  'iso-10087': {
    designation: 'ISO 10087', title: 'Small craft. Craft identification. Coding system', publisher: 'ISO', edition: null, standing: 'published',
    remark: 'Structure and example read in public documents.',
  },
  'iec-61162-1': {
    designation: 'IEC 61162-1', title: 'Maritime navigation and radiocommunication equipment and systems. Digital interfaces. Part 1: single talker and multiple listeners (NMEA 0183)',
    publisher: 'IEC', edition: null, standing: 'published', remark: 'Rate, framing and length of sentences read in public documents; currents of talkers and listeners from memory.',
  },
  'iec-61162-2': {
    designation: 'IEC 61162-2', title: 'Maritime navigation and radiocommunication equipment and systems. Digital interfaces. Part 2: single talker and multiple listeners, high-speed transmission',
    publisher: 'IEC', edition: null, standing: 'published', remark: 'The rate read in public documents.',
  },
  '2013-53-eu': {
    designation: 'Directive 2013/53/EU', title: 'Directive on recreational craft and personal watercraft, annex I, part A', publisher: 'European Union', edition: null, standing: 'public law',
    remark: 'Headings from the official list of contents; what each point asks is from memory, but for 5.3, read in a published quotation.',
  },
  'iso-10240': {
    designation: 'ISO 10240', title: 'Small craft. Owner’s manual', publisher: 'ISO', edition: '2004, list of contents; 2022, published summary', standing: 'published',
    remark: 'The headings were read in this order; the pairing with the numbers of clauses is inferred.',
  },
  'iso-14946': { designation: 'ISO 14946', title: 'Small craft. Maximum load capacity', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-12217': { designation: 'ISO 12217', title: 'Small craft. Stability and buoyancy assessment', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-9094': { designation: 'ISO 9094', title: 'Small craft. Fire protection', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-10239': { designation: 'ISO 10239', title: 'Small craft. Liquefied petroleum gas (LPG) systems', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-8846': { designation: 'ISO 8846', title: 'Small craft. Electrical devices. Protection against ignition of surrounding flammable gases', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-12216': { designation: 'ISO 12216', title: 'Small craft. Windows, portlights, hatches, deadlights and doors', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-15085': { designation: 'ISO 15085', title: 'Small craft. Man-overboard prevention and recovery', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-15084': { designation: 'ISO 15084', title: 'Small craft. Anchoring, mooring and towing. Strong points', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'iso-11591': { designation: 'ISO 11591', title: 'Small craft. Field of vision from the steering position', publisher: 'ISO', edition: null, standing: 'from memory', remark: null },
  'signal-words': {
    designation: 'ANSI Z535.4 and ISO 3864-2', title: 'Product safety signs and labels: signal words', publisher: 'ANSI, ISO', edition: null, standing: 'published', remark: 'Meanings and colours of the signal words read in public documents.',
  },
  'sentence-examples': {
    designation: 'published example sentences', title: 'Example sentences of receivers, sounders and instruments as printed in open manuals and data', publisher: '', edition: null,
    standing: 'published', remark: 'Lengths counted on the examples; how often each is sent is common practice.',
  },
  'iec-60445': {
    designation: 'IEC 60445', title: 'Basic and safety principles for man-machine interface, marking and identification. Identification of equipment terminals, conductor terminations and conductors',
    publisher: 'IEC', edition: null, standing: 'from memory', remark: 'Colours of the conductors of three-phase supplies.',
  },
  'tia-568': {
    designation: 'TIA-568', title: 'Balanced twisted-pair telecommunications cabling and components standard', publisher: 'Telecommunications Industry Association', edition: null,
    standing: 'from memory', remark: 'The two orders of the pairs at an eight-way plug, A and B.',
  },
  '46-cfr-25': {
    designation: '46 CFR 25.26-50', title: 'Code of Federal Regulations, title 46, part 25: requirements for uninspected vessels, servicing of distress beacons', publisher: 'United States Government',
    edition: null, standing: 'public law', remark: 'Read in the law: monthly test, replacement of the battery. The same test is in 46 CFR 122.728 and 169.831.',
  },
  '46-cfr-160': {
    designation: '46 CFR 160.036', title: 'Code of Federal Regulations, title 46, part 160: hand-held rocket-propelled parachute red flare distress signals', publisher: 'United States Government',
    edition: null, standing: 'public law', remark: 'Read in the law: marked to expire at most 42 months after manufacture. That unexpired ones only may be used is in 33 CFR 175.125.',
  },
  'imo-circ-1040': {
    designation: 'IMO MSC/Circ.1040', title: 'Guidelines on annual testing of 406 MHz satellite EPIRBs', publisher: 'IMO', edition: null, standing: 'published',
    remark: 'With SOLAS chapter IV, regulation 15.9: a rule for ships, good practice on a small craft.',
  },
  'imo-circ-1039': {
    designation: 'IMO MSC/Circ.1039', title: 'Guidelines for shore-based maintenance of satellite EPIRBs', publisher: 'IMO', edition: null, standing: 'published',
    remark: 'At most five years apart; repeated by a flag administration in its marine guidance note 673. A rule for ships.',
  },
  'imo-circ-1252': {
    designation: 'IMO MSC.1/Circ.1252', title: 'Guidelines on annual testing of the automatic identification system (AIS)', publisher: 'IMO', edition: null, standing: 'from memory',
    remark: 'A rule for ships, good practice on a small craft.',
  },
  'solas-iii': {
    designation: 'SOLAS chapter III', title: 'International Convention for the Safety of Life at Sea, chapter III: life-saving appliances', publisher: 'IMO', edition: null, standing: 'published',
    remark: 'Regulation 20.8; service up to 30 months apart with special approval by MSC.1/Circ.1328. A rule for ships.',
  },
  'gmdss-tests': {
    designation: 'routine tests of GMDSS', title: 'List of routine tests and checks of radio installations of the global maritime distress and safety system', publisher: '', edition: null,
    standing: 'published', remark: 'Read in a public list. A rule for ships, good practice on a small craft.',
  },
  'beacon-registers': {
    designation: 'national beacon registers', title: 'Conditions of national registers of 406 MHz beacons', publisher: '', edition: null, standing: 'published',
    remark: 'To be confirmed every two years; ask the register of the flag.',
  },
  'release-manuals': {
    designation: 'manuals of hydrostatic releases', title: 'Instructions of makers of hydrostatic release units', publisher: '', edition: null, standing: 'published',
    remark: 'Two years from installation, four years from manufacture.',
  },
  'nfpa-10': {
    designation: 'NFPA 10', title: 'Standard for portable fire extinguishers', publisher: 'NFPA', edition: null, standing: 'published',
    remark: 'Intervals read in published guides. A land rule, used as advice; the flag may ask for more.',
  },
  'ansi-z535': {
    designation: 'ANSI Z535', title: 'Safety signs and labels (Z535.2 facility signs, Z535.4 product labels)', publisher: 'National Electrical Manufacturers Association',
    edition: '2011, as quoted', standing: 'published', remark: 'Letter heights by viewing distance, and signal words, read as quoted in published guides.',
  },
  'iso-18004': {
    designation: 'ISO/IEC 18004', title: 'QR code bar code symbology specification', publisher: 'ISO/IEC', edition: null, standing: 'from memory',
    remark: 'Quiet zone of four modules on each side, levels of error correction.',
  },
  'iec-62491': {
    designation: 'IEC 62491', title: 'Industrial systems, installations and equipment and industrial products. Labelling of cables and cores', publisher: 'IEC', edition: null,
    standing: 'from memory', remark: 'Each cable carries its own label at both ends.',
  },
  'typeface': {
    designation: 'the typeface', title: 'IBM Plex Mono and IBM Plex Sans Condensed, semibold: metrics of the fonts in templates/assets/fonts', publisher: '', edition: null, standing: 'derived',
    remark: 'Advances and the height of capitals, in thousandths of the text size; held in the tests against what a browser measures.',
  },
  'common-practice': { designation: 'common practice', title: 'Common practice of the trade, no published source', publisher: '', edition: null, standing: 'common practice', remark: null },
  'heat-balance': {
    designation: 'heat balance of a conductor', title: 'Steady heat balance of a conductor', publisher: '', edition: null, standing: 'derived', remark: 'An estimate, used for the physical voltage drop only.',
  },
  'circuit-theory': { designation: 'circuit theory', title: "Ohm's law and Kirchhoff's laws", publisher: '', edition: null, standing: 'derived', remark: null },
} as const satisfies Record<string, Source>

export const commonPractice = (place: string): Citation => ({ source: 'common-practice', place })

/** How a cited figure was confirmed. */
export const standingOf = (citation: Citation): Standing => citation.standing ?? bibliography[citation.source].standing

/** "ISO 13297, place (from memory; …)": a citation in words, with a warning where no copy of the source was at hand. */
export function cite(citation: Citation): string {
  const source: Source = bibliography[citation.source]
  const words = [source.designation, citation.place].filter(part => part !== '').join(', ')
  return standingOf(citation) === 'from memory' ? `${words} (from memory; confirm against the source)` : words
}
