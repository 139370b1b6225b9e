import { join } from 'node:path';
import type { SpeciesKey } from '../chemistry/formula.ts';
import { nameCouples, sortCouples } from './couple-ids.ts';
import { FaultList } from './fault-list.ts';
import { overlaid, readOverlay } from './overlay.ts';
import { readCouples } from './read-couples.ts';
import { readOverlayFile, readText } from './read-text.ts';
import type { Tables } from './tables.ts';
import { withPaths } from './with-paths.ts';

/**
 * The couples in force and the name of their table, without the other data files.
 * @param overlayFile a department's own table
 * @param naming lists of species; only couples that hold every species of one of them are read, more quickly than all. A department's own
 * table is always read whole, since its owner should know of its faults.
 * @throws Faults, each with the path of its file; Fault `unreadable-file`
 */
export function readCouplesOnly(
  folder: string,
  overlayFile?: string,
  naming?: readonly (readonly SpeciesKey[])[],
): Pick<Tables, 'name' | 'couples'> {
  const overlay = overlayFile === undefined ? undefined : readOverlayFile(overlayFile);
  return withPaths(folder, overlayFile, () => {
    const faults = new FaultList();
    const isWanted = (half: string) =>
      overlay !== undefined || (naming?.some((keys) => keys.every((key) => half.includes(key))) ?? true);
    const ours = readCouples('couples.csv', readText(join(folder, 'couples.csv')), faults, isWanted);
    const rows = overlay ? overlaid(ours, readOverlay(overlay, faults)) : ours;
    const couples = sortCouples(nameCouples(rows, faults));
    faults.throwIfAny();
    return { name: overlay ? `default + ${overlay.name}` : 'default', couples };
  });
}
