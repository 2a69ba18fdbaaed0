import { numberIn } from '../../plan/facts.ts';
import { name, type Say } from '../say.ts';
import type { FaultKind } from './faultsOf.ts';

const noWay =
  'Without a way from the air handler to a room and back nothing flows, and no flow, pressure or size can be told.';

/** Words for what is wrong with the ducts as drawn. */
export const sayFaults: Readonly<Record<FaultKind, Say>> = {
  'run-circles': (j) => ({
    what: `“${name(j)}” leads back to itself instead of to the air handler.`,
    why: noWay,
    mend: 'Choose what it joins: the section nearer the air handler, or nothing where it joins the air handler itself.',
  }),
  'run-joins-nothing': (j) => ({
    what: `“${name(j)}” joins a section that is not there any more.`,
    why: noWay,
    mend: 'Choose what it joins again, or leave it empty where it joins the air handler itself.',
  }),
  'run-joins-other-side': (j) => ({
    what: `“${name(j)}” joins a section of the other side: supply and return would be one.`,
    why: 'Air would go straight back into the unit.',
    mend: 'Correct its side, or what it joins.',
  }),
  'run-ends-blind': (j) => ({
    what: `“${name(j)}” ends in nothing: no register or grille, and no further section.`,
    why: 'It carries no air, and what it costs is lost.',
    mend: 'Put a register or a grille at its end, or take it out.',
  }),
  'run-without-size': (j) => ({
    what: `“${name(j)}” has a size of nothing.`,
    why: noWay,
    mend: 'Give its inside diameter, or its width and height.',
  }),
  'run-without-length': (j) => ({
    what: `“${name(j)}” has neither a length nor a fitting.`,
    why: 'Without any resistance the air in it cannot be told.',
    mend: 'Give its length as installed, or take it out and join what follows to what comes before.',
  }),
  'register-without-run': (j) => ({
    what: `“${name(j)}” stands at the end of a section that is not there any more.`,
    why: noWay,
    mend: 'Choose its section again.',
  }),
  'register-without-opening': (j) => ({
    what: `“${name(j)}” has a face of nothing: no air passes.`,
    why: noWay,
    mend: 'Give the width and height of its face, and the share of it that is open.',
  }),
  'filter-without-face': () => ({
    what: 'The filter has a face of nothing: no air passes.',
    why: noWay,
    mend: 'Give its width and height.',
  }),
  'table-out-of-order': (j) => ({
    what: `The blower’s table “${name(j)}” has two points at one flow.`,
    why: 'Between them it has no pressure that could be read.',
    mend: 'Hold the table against the sheet. A blower that holds its flow at every pressure is one of constant airflow: choose that kind of motor.',
  }),
  'no-registers': () => ({
    what: 'No register is drawn on the supply side.',
    why: noWay,
    mend: 'Put a register at the end of each supply run.',
  }),
  'no-grilles': () => ({
    what: 'No grille is drawn on the return side: the air has no way back to the unit.',
    why: noWay,
    mend: 'Draw the return: a grille, its duct and the box at the unit. Mark their side as return.',
  }),
  'one-register': (j) => ({
    what: `All the unit’s air leaves through one register, “${name(j)}”, and ${numberIn(j, 'rooms')} rooms are to be heated.`,
    why: 'It will be loud and draughty there, and the other rooms stay cold with their doors shut.',
    mend: 'Lead a run to each room that has a load of its own.',
  }),
  unsolvable: (j) => ({
    what: `“${name(j)}” has a size with which no flow can be told.`,
    why: noWay,
    mend: 'Look at its length, size and fittings: one of them is far from any duct’s.',
  }),
};
