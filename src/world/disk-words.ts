const words: Readonly<Record<string, string>> = {
  EACCES: 'permission is denied',
  EPERM: 'permission is denied',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EISDIR: 'there is a folder of that name',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EEXIST: 'there is a file of that name',
  ENOENT: 'the folder does not exist',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links run in a circle',
  EMFILE: 'too many files are open',
  EBUSY: 'another program is using it',
  EFBIG: 'the file would be too large for the disk',
  EIO: 'the disk reported a fault',
};

/** The system's short name of a failure, `ENOENT`; empty where the thrown value has none. */
export function failureName(failure: unknown): string {
  if (typeof failure !== 'object' || failure === null || !('code' in failure))
    return '';
  return typeof failure.code === 'string' ? failure.code : '';
}

/** Why the disk refused, in plain words without a full stop; unknown failures keep their short name. */
export function failureWords(failure: unknown): string {
  const name = failureName(failure);
  return (
    words[name] ?? `the system refused it (${name === '' ? 'no reason given' : name})`
  );
}
