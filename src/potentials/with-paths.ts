import { basename, join } from 'node:path';
import { Fault, Faults } from '../exact/fault.ts';

/**
 * Runs a reader of data files. Its faults tell the path as it was given, not the bare file name.
 * @param overlayFile a department's own table, if one is read
 */
export function withPaths<T>(folder: string, overlayFile: string | undefined, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Faults)) throw error;
    throw new Faults(error.faults.map((fault) => withPath(fault, folder, overlayFile)));
  }
}

function withPath({ code, message, place }: Fault, folder: string, overlayFile: string | undefined): Fault {
  if (place.file === undefined) return new Fault(code, message, place);
  const isOverlay = overlayFile !== undefined && place.file === basename(overlayFile);
  return new Fault(code, message, { ...place, file: isOverlay ? overlayFile : join(folder, place.file) });
}
