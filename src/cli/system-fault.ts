import { Fault } from '../exact/fault.ts';

/** What the system's error codes mean to someone who is not a programmer. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'it may not be used by you',
  EBUSY: 'it is in use by another program',
  EDQUOT: 'your share of the disk is used up',
  EEXIST: 'a file of that name is in the way',
  EFBIG: 'the file would be larger than the system allows',
  EIO: 'the disk reports an error',
  EISDIR: 'it is a folder, not a file',
  EMFILE: 'too many files are open',
  ENAMETOOLONG: 'its name is too long',
  ENOENT: 'there is no such file or folder',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'part of its path is a file, not a folder',
  ENOTEMPTY: 'there is something in it',
  EPERM: 'the system does not allow it',
  EROFS: 'the disk can only be read',
};

/**
 * The Fault for something that the system refused. An error that does not come from the system is ours, and stays as it is.
 * @param expected what was being tried, after `expected`: `to read the file …`
 */
export function systemFault(code: string, expected: string, error: unknown): unknown {
  const system = error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;
  if (system === undefined || error instanceof Fault || !/^E[A-Z0-9]+$/.test(system)) return error;
  return new Fault(code, `expected ${expected}, but ${REASONS[system] ?? 'the system refuses'} (${system})`);
}
