import type { Given } from './read-arguments.ts';
import type { UsageFault } from './usage-fault.ts';

/** The folder that a command line names, without slashes at its end, or what is wrong. */
export function folderIn(
  { positionals }: Given,
  command: string,
): { readonly folder: string } | { readonly fault: UsageFault } {
  const [folder = ''] = positionals;
  if (folder === '')
    return {
      fault: {
        message: `${command} needs the folder of a project`,
        hints: [`write sumzero ${command} FOLDER`],
      },
    };
  return { folder: folder === '/' ? folder : folder.replace(/\/+$/u, '') };
}
