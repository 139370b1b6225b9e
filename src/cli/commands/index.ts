import type { Command } from '../command.ts';

const named = (name: string, commands: readonly Command[]): Command => commands.find((each) => each.name === name)!;
const ofFormulas = (name: string) => async () => named(name, (await import('./of-formulas.ts')).OF_FORMULAS);
const ofPotentials = (name: string) => async () => named(name, (await import('./of-potentials.ts')).OF_POTENTIALS);

/**
 * Every command by its name, in the order in which help lists them; each is loaded when it is called. A new one is its file and a line
 * here.
 */
export const COMMANDS: ReadonlyMap<string, () => Promise<Command>> = new Map(
  Object.entries({
    sheet: async () => (await import('./sheet.ts')).sheet,
    browse: async () => (await import('./browse.ts')).browse,
    another: async () => (await import('./another.ts')).another,
    swap: async () => (await import('./swap.ts')).swap,
    again: async () => (await import('./again.ts')).again,
    families: async () => (await import('./families.ts')).families,
    inspect: async () => (await import('./inspect.ts')).inspect,
    demo: async () => (await import('./demo.ts')).demo,
    balance: ofFormulas('balance'),
    oxidation: ofFormulas('oxidation'),
    mass: ofFormulas('mass'),
    colour: ofFormulas('colour'),
    cell: ofPotentials('cell'),
    react: ofPotentials('react'),
    name: ofFormulas('name'),
    electrons: ofFormulas('electrons'),
    titration: ofPotentials('titration'),
    table: ofPotentials('table'),
  }),
);

/** All of them, loaded. */
export function allCommands(): Promise<readonly Command[]> {
  return Promise.all([...COMMANDS.values()].map((load) => load()));
}
