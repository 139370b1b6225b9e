import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Fault } from '../exact/fault.ts';
import type { SetRecord } from './set-record.ts';
import { readSetRecord } from './set-record.ts';
import type { MayReplace } from './write-set.ts';

/** A set that is there stays, unless `--replace` is given; a folder that holds no set of ours stays in any case. */
export function replacing(allowed: boolean): MayReplace {
  return (folder) => {
    if (!allowed)
      throw new Fault(
        'existing-result',
        `expected a new folder, found \`${folder}\` already there; nothing was touched (another --name, or --replace)`,
      );
    if (recordIn(folder) === undefined) throw notOurs(folder);
  };
}

/** Replaces a set only when its record is the one that is meant. */
export function replacingOnly(isMeant: (record: SetRecord) => boolean): MayReplace {
  return (folder) => {
    const record = recordIn(folder);
    if (record === undefined || !isMeant(record)) throw notOurs(folder);
  };
}

function notOurs(folder: string): Fault {
  return new Fault(
    'not-our-result',
    `expected a set that couplet may replace in \`${folder}\`, found something else there; nothing was touched`,
  );
}

/** The record of a set that lies in a folder. A folder whose record is damaged is treated as the user's. */
function recordIn(folder: string): SetRecord | undefined {
  const file = join(folder, 'record.json');
  if (!existsSync(file)) return undefined;
  try {
    return readSetRecord(file);
  } catch {
    return undefined;
  }
}
